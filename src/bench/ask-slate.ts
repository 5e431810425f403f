/** A question to the Slate in the middle of a run, in two breaths: "slate", and then the question. Pure. */

import { commandPhrases } from '../flow/index.ts';
import { type Language, sayIn, tableIn, voiceTexts } from '../texts/index.ts';
import { normalise } from '../words/index.ts';
import { asked, talked } from './beside-run.ts';
import { withUnderstood } from './entry.ts';
import type { Heard, ListenFor } from './ports.ts';
import type { RunState, RunStep } from './run-state.ts';
import type { BenchItem } from './said-now.ts';
import { slateAnswer } from './slate-answer.ts';
import { slatePhrases } from './slate-phrases.ts';

const told = (state: RunState) => sayIn(state.job.flow.language, voiceTexts);

/** After so many that gave no answer, the job goes on. */
const mostTries = 2;

export function slateItem(language: Language): BenchItem {
  const phrases = tableIn(language, voiceTexts).askSlate;
  return { id: 'slate', kind: 'ask', phrases, strict: false, slate: true };
}

/** An ear that knows only listed phrases hears the next sentence as a question; the job waits meanwhile. */
export function openSlate(state: RunState, heard: Heard): RunStep {
  return asked({ ...state, slateAsked: 0 }, heard, told(state)('slateAsks'));
}

/**
 * What was said after "slate". Null when it is a word that goes before any question: the drill, a hold.
 * A word of the job is no question, and does nothing here.
 */
export function takeSlateQuestion(
  state: RunState,
  heard: Heard,
  first: readonly BenchItem[],
): RunStep | null {
  const said = normalise(heard.text);
  if (first.some(({ phrases }) => phrases.includes(said))) return null;
  const { language } = state.job.flow;
  if (commandPhrases(language, 'repeat').includes(said)) return openSlate(state, heard);
  if (leaving(language).includes(said)) return leaveSlate(state, heard);
  const answer = slateAnswer(heard.text, state.job.card, state.job.flow.language);
  if (!answer.ok) return missedQuestion(state, heard, answer.fault);
  const { question, spoken, why } = answer.reply;
  const step = asked({ ...withoutQuestion(state), told: { why } }, heard, spoken);
  return withUnderstood(step, question);
}

/** Who says "next" here means to go on with the job; it does nothing else. */
function leaving(language: Language): readonly string[] {
  const { leaveSlate: leave } = tableIn(language, voiceTexts);
  return [...leave, ...commandPhrases(language, 'wrong'), ...commandPhrases(language, 'next')];
}

/** Answered beside the run: nothing in it moves. */
export function takeSlate(state: RunState, heard: Heard, question: string): RunStep {
  const ready = talked(state, { type: 'understood' });
  const answer = slateAnswer(question, state.job.card, state.job.flow.language);
  if (!answer.ok) return asked(ready, heard, answer.fault);
  const { spoken, why } = answer.reply;
  return asked({ ...ready, told: { why } }, heard, spoken);
}

/** Nothing was said for a while, or it was taken back. */
export function leaveSlate(state: RunState, heard: Heard): RunStep {
  return asked(withoutQuestion(state), heard, told(state)('slateLeft'));
}

/** Sound that no question fits. */
export function missedQuestion(state: RunState, heard: Heard, fault?: string): RunStep {
  const tries = (state.slateAsked ?? 0) + 1;
  if (tries >= mostTries) return leaveSlate(state, heard);
  return asked({ ...state, slateAsked: tries }, heard, fault ?? told(state)('slateMissed'));
}

export function withoutQuestion({ slateAsked: _over, ...state }: RunState): RunState {
  return state;
}

/** What the ear listens for while a question is awaited. */
export function slateListen(language: Language, first: readonly BenchItem[]): ListenFor {
  const always = [...first.flatMap(({ phrases }) => phrases), ...leaving(language)];
  return { phrases: [...always, ...commandPhrases(language, 'repeat'), ...slatePhrases(language)] };
}
