/** Words for who is learning: the paces, the trade terms and parts of this step, and the answers to a check question. Pure. */

import { askedFacts, paceWords, planAt, positionOf } from '../flow/index.ts';
import { apprenticeTexts, englishLanguage, tableIn } from '../texts/index.ts';
import { passWords } from './check-question.ts';
import { partsNamed, termsOfStep } from './glossary.ts';
import type { PaceWish } from './pace-run.ts';
import type { RunState } from './run-state.ts';
import type { BenchItem } from './said-now.ts';

const paceItems: readonly BenchItem[] = Object.entries(paceWords).map(([pace, phrases]) => ({
  ...plain(`pace:${pace}`, phrases),
  pace: pace as PaceWish,
}));

/** All of them; where the job has ended there is nothing to learn. */
export function learnItems(state: RunState): readonly BenchItem[] {
  if (positionOf(state.snapshot).phase === 'end') return [];
  return [...optionItems(state), ...paceItems, ...termItems(state), ...partItems(state)];
}

function plain(id: string, phrases: readonly string[]): BenchItem {
  return { id, kind: 'ask', phrases, strict: false };
}

function optionItems({ question }: RunState): readonly BenchItem[] {
  if (!question) return [];
  const options = question.asked.options.map(({ word }, index): BenchItem => {
    return { ...plain(`question:${index}`, [word]), kind: 'question', option: word };
  });
  return [...options, { ...plain('question:pass', passWords), kind: 'question', option: null }];
}

function termItems({ job, snapshot }: RunState): readonly BenchItem[] {
  const step = planAt(job, snapshot)?.step;
  if (!step) return [];
  const { askTerm } = tableIn(englishLanguage, apprenticeTexts);
  return termsOfStep(step, englishLanguage).map(({ id, term }) => ({
    ...plain(`term:${id}`, asked(askTerm, term)),
    term,
  }));
}

/** The parts that the step and its open conditions are about. */
function partItems({ job, snapshot }: RunState): readonly BenchItem[] {
  const step = planAt(job, snapshot)?.step;
  const facts = askedFacts(job, snapshot).map(({ fact }) => fact.part);
  const { askPart } = tableIn(englishLanguage, apprenticeTexts);
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
