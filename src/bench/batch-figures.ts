/** What a size of a batch comes to, each figure with its "why that?": mean, spread, Cpk, drift. Pure. */

import { type Figure, formatOf, type Job, shownAs } from '../flow/index.ts';
import { batchTexts, type Language, sayIn } from '../texts/index.ts';
import { answerRule, findRule, type RuleAnswer, type RuleValues, toBase } from '../trade/index.ts';
import { sayNumber, showNumber } from '../words/index.ts';
import { type Characteristic, driftOf } from './batch.ts';

type Good = Extract<RuleAnswer, { ok: true }>;

/** Figures that cannot be worked out yet are left out: one reading has no spread. */
export function batchFigures(job: Job, one: Characteristic): readonly Figure[] {
  const say = sayIn(job.flow.language, batchTexts);
  const mm = (value: number) => toBase(value, one.unit, 'length');
  const readings = one.values.map(mm);
  const limits = { lower: mm(one.lower), upper: mm(one.upper) };
  const size = (value: number) => sizeText(job, value);
  const spread = asked(job, 'batch-spread', { readings });
  const capable = asked(job, 'capability', { readings, ...limits });
  const drift = driftOf(job, one);
  const given = readings.map((value, at) => ({ label: String(at + 1), ...size(value) }));
  const range = spread?.parts?.range?.value;
  const figure = (id: string, label: string, rule: string, answer: Good, told: Told): Figure => ({
    id: `${one.id}:${id}`,
    label,
    ...told,
    given,
    working: answer.working,
    formula: findRule(rule, job.flow.language)?.formula ?? '',
    source: answer.source ?? findRule(rule, job.flow.language)?.source ?? '',
  });
  return [
    ...(spread ? [figure('mean', say('mean'), 'batch-spread', spread, size(spread.value))] : []),
    ...(spread && typeof range === 'number'
      ? [figure('spread', say('spread'), 'batch-spread', spread, size(range))]
      : []),
    ...(capable
      ? [figure('cpk', say('cpk'), 'capability', capable, plain(job.flow.language, capable.value))]
      : []),
    ...(drift.ok
      ? [figure('drift', say('drift'), 'drift', drift, word(drift.wordShown ?? drift.word ?? ''))]
      : []),
  ];
}

type Told = Pick<Figure, 'text' | 'spoken'>;

function asked(job: Job, name: string, values: RuleValues): Good | undefined {
  const rule = findRule(name, job.flow.language);
  const answer = rule && answerRule(rule, values);
  return answer?.ok ? answer : undefined;
}

function sizeText({ card, flow: { language } }: Job, value: number): Told {
  const { unit, decimals } = formatOf('length', card.units);
  const shown = shownAs(value, 'length', { unit, decimals: decimals + 1 });
  return {
    text: showNumber(shown.value, shown.unit, shown.decimals, language),
    spoken: sayNumber(shown.value, shown.unit, shown.decimals, { language }),
  };
}

function plain(language: Language, value: number): Told {
  return {
    text: showNumber(value, '', 2, language),
    spoken: sayNumber(value, '', 2, { language }),
  };
}

function word(text: string): Told {
  return { text, spoken: text };
}
