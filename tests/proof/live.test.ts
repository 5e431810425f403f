import { describe, expect, it } from 'vitest';
import { Live } from '../../src/proof/live.ts';
import { askedStates } from '../../src/proof/told-apart.ts';
import { KnownVariables, Variables } from '../../src/proof/variables.ts';
import { check, gauge, mm, step, tinyJob } from './tiny-walk.ts';

/** Takes a size that a later step says. */
const job = tinyJob(
  check('first'),
  gauge('gauge'),
  step('says', { say: 'It was {gaugeSize}.' }),
  step('after', {}),
);
const live = new Live(job, new Variables(job, new KnownVariables(job.flow.kind, askedStates(job))));
const dead = (from: string, to: string) => live.deadBetween(from, to).map(({ name }) => name);

describe('readings that count from a step on', () => {
  it('count from where they are taken to where they are said', () => {
    expect(dead('gauge', 'says')).toEqual([]);
  });

  it('count behind the last step that looks at them as long as a way leads back to it', () => {
    expect(dead('says', 'after')).toEqual([]);
    expect(dead('after', 'end')).toEqual(['reading:gaugeSize']);
  });

  it('do not count where they are taken anew before they are looked at', () => {
    expect(dead('says', 'first')).toEqual(['reading:gaugeSize']);
  });

  it('are no variables at all where no step looks at them', () => {
    const reading = { id: 'idle', label: 'Idle', unit: 'mm', decimals: 2, min: mm(5), max: mm(9) };
    const unread = tinyJob(gauge('gauge', { reading }), step('after', {}));
    const known = new KnownVariables(unread.flow.kind, askedStates(unread));
    expect(new Variables(unread, known).named('reading:idle')).toBeUndefined();
  });
});
