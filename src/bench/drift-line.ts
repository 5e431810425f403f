/** What is said when the pieces of a batch drift: how many, which way, and what to do on the dial. Pure. */

import type { Job } from '../flow/index.ts';
import { batchTexts, sayIn } from '../texts/index.ts';
import { fromBase, type RuleAnswer } from '../trade/index.ts';
import { sayNumber } from '../words/index.ts';
import { type Characteristic, characteristics, driftOf, isMadeOnDial } from './batch.ts';
import type { KeptReading } from './ports.ts';
import type { RunState } from './run-state.ts';
import { behindLine } from './why-that.ts';

/** A drift told, and what stands behind it. */
export interface Drift {
  readonly line: string;
  readonly why: string;
}

/** Nothing when this run is of no batch, or the size that was just taken does not drift. */
export function driftNow(
  { job, batch, readings }: Pick<RunState, 'job' | 'batch' | 'readings'>,
  reading: KeptReading | undefined,
): Drift | undefined {
  if (!batch || !reading) return undefined;
  const pieces = [...batch.earlier, [...readings, reading]];
  const id = `${reading.step}/${reading.reading}`;
  const one = characteristics(job, pieces).find((size) => size.id === id);
  return one && driftTold(job, one);
}

/** The drift of one size over the pieces made so far. */
export function driftTold(job: Job, one: Characteristic): Drift | undefined {
  const answer = driftOf(job, one);
  if (!answer.ok || (answer.word !== 'rising' && answer.word !== 'falling')) return undefined;
  const onDial = isMadeOnDial(job, one);
  const line = lineOf(job, answer.word, answer, onDial);
  const { working, source = driftSource } = answer;
  return { line, why: behindLine(one.label, { working, source }, job.flow.language) };
}

const driftSource = 'common practice, no source';

function lineOf(
  { flow: { language }, card }: Job,
  word: 'rising' | 'falling',
  { value, parts = {} }: Extract<RuleAnswer, { ok: true }>,
  onDial: boolean,
): string {
  const say = sayIn(language, batchTexts);
  const [dial, run] = [numberIn(parts.dial?.value), numberIn(parts.run?.value)];
  const n = sayNumber(run, '', 0, { language });
  const drift = say(word, { n });
  if (value === 0) return onDial ? say('leave', { drift }) : drift;
  // Smaller than the figures on the bench: in microns, or in thou and their tenths.
  const small = (size: number) => {
    const [unit, decimals] = card.units === 'inch' ? (['thou', 1] as const) : (['um', 0] as const);
    return sayNumber(fromBase(Math.abs(size), unit, 'length'), unit, decimals, { language });
  };
  const told = { n, size: small(value), dial: small(dial) };
  if (!onDial) return say(`${word}Elsewhere`, told);
  return say(`${word}${dial > 0 ? 'Deeper' : 'Back'}`, told);
}

function numberIn(value: number | readonly number[] | undefined): number {
  return typeof value === 'number' ? value : 0;
}
