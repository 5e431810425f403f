import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alwaysAfter, type Step } from '../../src/flow/index.ts';
import { stepGraph, stepsBetween, targetsOf } from '../../src/flow/step-graph.ts';
import { smallFlow, tell } from './shipped.ts';

const seed = 20_261_125;
const often = { seed, numRuns: 400 };

/** Steps s0, s1, … that go to the steps of these numbers; a number past the last is the end. */
function chooseSteps(targets: readonly (readonly number[])[]): readonly Step[] {
  const [pattern] = smallFlow([
    {
      kind: 'choose',
      id: 'a',
      title: 'A',
      say: 'A.',
      options: [
        { id: 'x', word: 'ex', next: 'end' },
        { id: 'y', word: 'why not', next: 'end' },
      ],
    },
  ]).file.steps;
  if (pattern?.kind !== 'choose') throw new Error('The pattern is a choice.');
  return targets.map((ends, index) => ({
    ...pattern,
    id: `s${index}`,
    options: ends.map((end, at) => ({
      id: `o${at}`,
      word: 'w',
      also: [],
      next: end < targets.length ? `s${end}` : 'end',
    })),
  }));
}

const graphs = fc.integer({ min: 1, max: 9 }).chain((count) =>
  fc.array(fc.array(fc.nat(count), { minLength: 1, maxLength: 3 }), {
    minLength: count,
    maxLength: count,
  }),
);

/** What can be reached from s0 without stepping on `without`. By definition, nothing else. */
function reached(
  targets: readonly (readonly number[])[],
  from: number,
  without = -1,
): ReadonlySet<number> {
  const seen = new Set<number>();
  const open = from === without ? [] : [from];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    if (seen.has(at)) continue;
    seen.add(at);
    for (const end of targets[at] ?? [])
      if (end !== without && end < targets.length) open.push(end);
  }
  return seen;
}

describe('a graph of steps', () => {
  test('knows which step every path goes through, as the definition has it', () => {
    fc.assert(
      fc.property(graphs, (targets) => {
        const graph = stepGraph(chooseSteps(targets));
        const all = reached(targets, 0);
        for (const step of all) {
          for (const through of all) {
            const always = step !== through && !reached(targets, 0, through).has(step);
            expect(alwaysAfter(graph, `s${step}`, `s${through}`)).toBe(always);
          }
        }
      }),
      often,
    );
  });

  test('reaches what can be reached', () => {
    fc.assert(
      fc.property(graphs, (targets) => {
        const { reachable } = stepGraph(chooseSteps(targets));
        expect(new Set(reachable)).toEqual(
          new Set([...reached(targets, 0)].map((one) => `s${one}`)),
        );
      }),
      often,
    );
  });

  test('finds the steps between a step and the one it goes back to', () => {
    fc.assert(
      fc.property(graphs, fc.nat(8), fc.nat(8), (targets, a, b) => {
        const [from, to] = [a % targets.length, b % targets.length];
        fc.pre(from !== to);
        const graph = stepGraph(chooseSteps(targets));
        // On a path from → … → step → … → to that passes `to` only at its end and `from` only at its start.
        const fromHere = reached(targets, from, to);
        const between = targets
          .map((_, step) => step)
          .filter((step) => step !== to && fromHere.has(step))
          .filter(
            (step) =>
              step === from ||
              reached(
                targets.map((ends, at) => (at === to ? [] : ends)),
                step,
                from,
              ).has(to),
          );
        expect(new Set(stepsBetween(graph, `s${from}`, `s${to}`))).toEqual(
          new Set(between.map((one) => `s${one}`)),
        );
      }),
      often,
    );
  });

  test('takes a thousand steps in a row', () => {
    const targets = Array.from({ length: 1000 }, (_, index) => [index + 1]);
    const graph = stepGraph(chooseSteps(targets));
    expect(graph.dominator.get('s999')).toBe('s998');
    expect(alwaysAfter(graph, 's999', 's0')).toBe(true);
  });
});

describe('where a step leads', () => {
  test('is the next in the file when nothing is said', () => {
    const { steps } = smallFlow([tell('a'), tell('b', { next: 'a' }), tell('c')]).file;
    expect(steps.map((_, index) => targetsOf(steps, index))).toEqual([['b'], ['a'], ['end']]);
  });
});
