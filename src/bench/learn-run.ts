/** Answers for who is learning: what a word means, where a part is, and a check question. Nothing in the job moves. Pure. */

import { apprenticeTexts, sayIn } from '../texts/index.ts';
import { asked, talked } from './beside-run.ts';
import { answerQuestion } from './check-question.ts';
import { findPartCalled, findTerm } from './glossary.ts';
import type { Heard, RunEntry } from './ports.ts';
import { presentLine } from './replies.ts';
import type { RunState, RunStep } from './run-state.ts';
import { viewNow } from './view-now.ts';

/** "What is a chuck?": in our own words; where this machine has the part, it is lit too. */
export function tellTerm(state: RunState, heard: Heard, name: string): RunStep {
  const { kind, language } = state.job.flow;
  const term = findTerm(name, language);
  const part = findPartCalled(name, kind, language);
  const line = term?.about ?? part?.about ?? sayIn(language, apprenticeTexts)('noTerm');
  return asked(part ? lit(state, part.id) : state, heard, line);
}

/** "Where is the tailstock?": the part is lit, and said what it is. */
export function tellPart(state: RunState, heard: Heard, name: string): RunStep {
  const { kind, language } = state.job.flow;
  const part = findPartCalled(name, kind, language);
  if (!part) return asked(state, heard, sayIn(language, apprenticeTexts)('notHere'));
  return asked(lit(state, part.id), heard, part.about);
}

function lit(state: RunState, part: string): RunState {
  return { ...state, lit: part };
}

/** Whatever was answered is explained; then the step goes on, at once or after asking once more. */
export function takeOption(state: RunState, heard: Heard, word: string): RunStep {
  const { question } = state;
  if (!question) return { state, effects: [] };
  const answer = answerQuestion(question, word, state.job.flow.language);
  const { step } = question;
  const event = { type: 'question', step, word, right: answer.right };
  const next = { ...state, question: answer.question };
  const line = answer.question ? answer.line : `${answer.line} ${presentLine(viewNow(next))}`;
  return asked(kept(next, answer.question ? line : undefined), heard, line, event);
}

/** Left unanswered, which is as good as any answer. */
export function passQuestion(state: RunState, heard: Heard): RunStep {
  const { question } = state;
  if (!question) return { state, effects: [] };
  const event = { type: 'question', step: question.step, passed: true };
  const next = kept({ ...talked(state, { type: 'understood' }), question: null });
  return asked(next, heard, next.lastLine, event);
}

/** The run after an entry that answered or passed a question: for the replay. */
export function questionAgain(state: RunState, { event, said }: RunEntry): RunState {
  const { question } = state;
  if (event?.type !== 'question' || !question) return state;
  const word = typeof event.word === 'string' ? event.word : undefined;
  const next =
    word === undefined ? null : answerQuestion(question, word, state.job.flow.language).question;
  return kept({ ...state, question: next }, next ? said : undefined);
}

/** What "repeat" says: the question while it stands, else what is to be done. */
function kept(state: RunState, line?: string): RunState {
  return { ...state, lastLine: line ?? presentLine(viewNow(state)) };
}
