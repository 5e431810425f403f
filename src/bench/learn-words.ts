/** Words for who is learning: the paces, the trade terms and parts of this step, and the answers to a check question. Pure. */

import { askedFacts, commandPhrases, paceIds, planAt, positionOf } from '../flow/index.ts';
import { apprenticeTexts, type Language, tableIn } from '../texts/index.ts';
import { partsNamed, termsOfStep } from './glossary.ts';
import type { RunState } from './run-state.ts';
import type { BenchItem } from './said-now.ts';

function paceItems(language: Language): readonly BenchItem[] {
  return paceIds.map((pace) => ({
    ...plain(`pace:${pace}`, commandPhrases(language, pace)),
    pace,
  }));
}

/** All of them; where the job has ended there is nothing to learn. */
export function learnItems(state: RunState): readonly BenchItem[] {
  if (positionOf(state.snapshot).phase === 'end') return [];
  const paces = paceItems(state.job.flow.language);
  return [...optionItems(state), ...paces, ...termItems(state), ...partItems(state)];
}

function plain(id: string, phrases: readonly string[]): BenchItem {
  return { id, kind: 'ask', phrases, strict: false };
}

function optionItems({ question, job }: RunState): readonly BenchItem[] {
  if (!question) return [];
  const options = question.asked.options.map(({ word }, index): BenchItem => {
    return { ...plain(`question:${index}`, [word]), kind: 'question', option: word };
  });
  const pass = commandPhrases(job.flow.language, 'pass');
  return [...options, { ...plain('question:pass', pass), kind: 'question', option: null }];
}

function termItems({ job, snapshot }: RunState): readonly BenchItem[] {
  const step = planAt(job, snapshot)?.step;
  if (!step) return [];
  const { askTerm } = tableIn(job.flow.language, apprenticeTexts);
  return termsOfStep(step, job.flow.language).map(({ id, term }) => ({
    ...plain(`term:${id}`, asked(askTerm, term)),
    term,
  }));
}

/** The parts that the step and its open conditions are about. */
function partItems({ job, snapshot }: RunState): readonly BenchItem[] {
  const step = planAt(job, snapshot)?.step;
  const facts = askedFacts(job, snapshot).map(({ fact }) => fact.part);
  const { askPart } = tableIn(job.flow.language, apprenticeTexts);
  return partsNamed([step?.part, ...facts], job.flow.kind).map(({ id, name }) => ({
    ...plain(`part:${id}`, asked(askPart, name)),
    part: name,
  }));
}

/** As an ear writes it: small letters and spaces. */
function asked(heads: readonly string[], name: string): readonly string[] {
  const said = name.toLowerCase().replaceAll('-', ' ');
  return heads.map((head) => `${head} ${said}`);
}
