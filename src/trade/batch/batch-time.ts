/** How long a piece and a batch take. */

import { worded } from '../../texts/index.ts';
import { aCount, aNumber } from '../inputs.ts';
import { part } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { numberOf } from '../values.ts';

/** Minutes that are nought when they are not given. */
const minutes = (name: string, meaning: string) =>
  aNumber(name, 'time', [0, 100_000], meaning, { default: 0 });

function work(values: RuleValues): Worked {
  const [setUp, cut] = [numberOf(values, 'setUp'), numberOf(values, 'cutting')];
  const handle = numberOf(values, 'handling');
  const [check, every] = [numberOf(values, 'checking'), numberOf(values, 'checkEvery')];
  const [change, life] = [numberOf(values, 'toolChange'), numberOf(values, 'toolPieces')];
  const pieces = numberOf(values, 'pieces');
  const each = cut + handle + check / every + change / life;
  const value = setUp + pieces * each;
  return {
    ok: true,
    value,
    working: worded`a piece: ${show(cut)} + ${show(handle)} + ${show(check)} ÷ ${every} + ${show(change)} ÷ ${life} = ${show(each, 4)} min; batch: ${show(setUp)} + ${pieces} × ${show(each, 4)} = ${show(value, 5)} min (${show(value / 60, 3)} h)`,
    parts: {
      each: part(each, 'time', 'time a piece, without set-up'),
      withSetUp: part(value / pieces, 'time', 'time a piece with its share of the set-up'),
      perHour: part(60 / each, 'ratio', 'pieces an hour once it runs'),
    },
  };
}

export const batchTime: Rule = {
  name: 'batch-time',
  title: 'Time of a batch',
  topic: 'batch',
  inputs: [
    aCount('pieces', [1, 1_000_000], 'pieces in the batch'),
    aNumber('cutting', 'time', [0, 10_000], 'cutting time a piece', { aboveMin: true }),
    minutes('handling', 'loading, unloading, deburring a piece'),
    minutes('setUp', 'setting up the batch'),
    minutes('checking', 'one measurement'),
    aCount('checkEvery', [1, 100_000], 'a measurement every so many pieces', { default: 1 }),
    minutes('toolChange', 'one tool change'),
    aCount('toolPieces', [1, 1_000_000], 'pieces an edge makes', { default: 1 }),
  ],
  output: {
    quantity: 'time',
    meaning: 'time of the whole batch',
    parts: { each: 'time', withSetUp: 'time', perHour: 'ratio' },
  },
  formula:
    'piece = cutting + handling + checking ÷ every + change ÷ pieces an edge; batch = set-up + pieces × piece',
  source: 'Groover, Fundamentals of Modern Manufacturing 4e, production cycle time (from memory)',
  cautions: ['Hurry is no allowance: the spindle stops for every measurement.'],
  work,
};
