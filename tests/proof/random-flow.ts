/** Random small flows, right and wrong ones: gates that lack a fact, loops, targets anywhere, facts that nobody restores. */

import fc from 'fast-check';
import { tinyFacts } from './tiny-kind.ts';

const mm = (is: number) => ({ is, unit: 'mm' });

const wanted = (facts: readonly string[], most = 3) =>
  fc
    .subarray([...facts], { maxLength: most })
    .chain((chosen) =>
      fc.record(
        Object.fromEntries(
          chosen.map((fact) => [fact, fc.constantFrom(...(tinyFacts[fact] ?? []).slice(0, 2))]),
        ),
      ),
    );

/** Mostly the good state, so that many flows are proved. */
const mostlyGood = (facts: readonly string[], most = 3) =>
  fc.oneof(
    { weight: 4, arbitrary: fc.subarray([...facts], { maxLength: most }).map(goodOnes) },
    { weight: 1, arbitrary: wanted(facts, most) },
  );

function goodOnes(facts: readonly string[]): Record<string, string> {
  return Object.fromEntries(facts.map((fact) => [fact, tinyFacts[fact]?.[0] ?? '']));
}

const facts = Object.keys(tinyFacts);

function stepOf(index: number, ids: readonly string[]) {
  const id = ids[index] ?? '';
  const following = ids[index + 1] ?? 'end';
  const target = fc.oneof(
    { weight: 3, arbitrary: fc.constant(following) },
    { weight: 1, arbitrary: fc.constantFrom(...ids, 'end') },
  );
  const base = {
    id: fc.constant(id),
    title: fc.constant(`Step ${index}`),
    say: fc.constantFrom('Do it.', 'Do it now.'),
    needs: mostlyGood(facts),
    next: target,
  };
  const reading = (name: string) => ({
    id: name,
    label: 'Size',
    unit: 'mm',
    decimals: 2,
    min: mm(5),
    max: mm(20),
  });
  const hands = fc.boolean();
  const limits = { lower: fc.constant(mm(9)), upper: fc.constant(mm(11)) };
  const side = fc.constantFrom('outside', 'inside');
  const { next: _, ...ends } = base;
  const cutNeeds = fc.oneof(
    { weight: 3, arbitrary: fc.constant({ motor: 'off', tool: 'clear', guard: 'closed' }) },
    { weight: 1, arbitrary: mostlyGood(facts) },
  );
  // The last is too fast for the chuck of one of the two cards.
  const speed = fc.constantFrom(
    ...[100, 100, 100, 200, 200, 1400].map((is) => ({ is, unit: 'rpm' })),
  );
  return fc.oneof(
    fc.record({
      kind: fc.constant('tell'),
      ...base,
      hands,
      moment: fc.option(fc.constant('reach'), { nil: undefined }),
    }),
    fc.record({ kind: fc.constant('check'), ...base, hands, facts: mostlyGood(facts, 2) }),
    fc.record({
      kind: fc.constant('do'),
      ...base,
      hands,
      begins: wanted(facts, 1),
      ends: mostlyGood(facts, 2),
    }),
    fc.record({
      kind: fc.constant('choose'),
      ...ends,
      options: fc.tuple(target, target).map(([a, b]) => [
        { id: 'left', word: 'go left', next: a },
        { id: 'right', word: 'go right', next: b },
      ]),
    }),
    fc.record({ kind: fc.constant('cut'), ...base, needs: cutNeeds, speed }),
    fc.record({
      kind: fc.constant('measure'),
      ...base,
      reading: fc.constant(reading(`r${index}`)),
    }),
    fc.record({
      kind: fc.constant('inspect'),
      ...ends,
      ...limits,
      side,
      reading: fc.constant(reading(`r${index}`)),
      within: target,
      rework: target,
      lost: target,
    }),
    fc.record({
      kind: fc.constant('passes'),
      ...base,
      ...limits,
      needs: cutNeeds,
      speed,
      side,
      reading: fc.constant(reading(`r${index}`)),
      from: fc.constant(mm(15)),
      finish: fc.constant(mm(10)),
      deepest: fc.constant(mm(1)),
      finishAllowance: fc.constant(mm(0.5)),
      lost: target,
    }),
  );
}

type Made = Record<string, unknown> & { kind: string; needs?: Record<string, string> };

const hasHands = ({ kind, hands }: Made) => hands === true || ['measure', 'inspect'].includes(kind);

/** What the reader refuses in any step is left out: a gate that hands in it, or the step itself, would undo. */
function readable(step: Made): Made {
  const { begins } = step as { begins?: Record<string, string> };
  const undone = [...Object.keys(begins ?? {}), ...(hasHands(step) ? ['guard'] : [])];
  const needs = Object.entries(step.needs ?? {}).filter(([fact]) => !undone.includes(fact));
  return { ...step, needs: Object.fromEntries(needs) };
}

/** As a careful author writes it: everything that turns stands still, and one step follows the other. */
function careful(step: Made, index: number, ids: readonly string[]): Made {
  const following = ids[index + 1] ?? 'end';
  const powered = ['cut', 'passes'].includes(step.kind);
  const { moment: _, ...rest } = step;
  const good = powered
    ? { motor: 'off', tool: 'clear', guard: 'closed' }
    : { motor: 'off', ...goodOnes(Object.keys(step.needs ?? {})) };
  return {
    ...rest,
    kind: step.kind,
    needs: good,
    ...('next' in step ? { next: following } : {}),
    ...('facts' in step ? { facts: { ...goodOnes(Object.keys(step.facts as object)) } } : {}),
    ...('begins' in step ? { begins: {} } : {}),
    ...('within' in step ? { within: following } : {}),
    ...('lost' in step ? { lost: 'end' } : {}),
  };
}

/** One gate of one step lacks one fact. */
const forgetting = (steps: readonly Made[]) =>
  fc.tuple(fc.nat({ max: steps.length - 1 }), fc.nat({ max: 2 })).map(([at, which]) =>
    steps.map((step, index) => {
      if (index !== at) return step;
      const lost = Object.keys(step.needs ?? {})[which];
      const kept = Object.entries(step.needs ?? {}).filter(([fact]) => fact !== lost);
      return { ...step, needs: Object.fromEntries(kept) };
    }),
  );

function fileOf(steps: readonly Made[]) {
  return {
    followrest: 'flow',
    version: 1,
    id: 'random',
    revision: 1,
    title: 'Random',
    about: '',
    machineKind: 'lathe',
    steps: steps.map((step) => JSON.parse(JSON.stringify(readable(step))) as unknown),
  };
}

/** Mostly so few steps that they can be walked plainly. */
const counts = fc.oneof(
  { weight: 3, arbitrary: fc.integer({ min: 1, max: 2 }) },
  { weight: 1, arbitrary: fc.integer({ min: 3, max: 4 }) },
);

/** A flow file as a value: wild, careful, or careful but for one condition; the reader may still refuse it. */
export const randomFlow = counts.chain((count) => {
  const ids = Array.from({ length: count }, (_, index) => `step-${'abcdef'[index]}`);
  const wild = fc
    .tuple(...ids.map((_, index) => stepOf(index, ids)))
    .map((steps) => steps as unknown as readonly Made[]);
  const right = wild.map((steps) => steps.map((step, index) => careful(step, index, ids)));
  return fc
    .oneof(
      { weight: 3, arbitrary: wild },
      { weight: 3, arbitrary: right },
      { weight: 2, arbitrary: right.chain(forgetting) },
    )
    .map(fileOf);
});
