/** Flows with one thing taken out: what a careless edit could do. The prover must find each one that matters. */

import type { FlowFile } from '../flow/index.ts';
import { limitMutants } from './limit-mutants.ts';

export type MutantKind = 'condition' | 'limit' | 'effect' | 'remedy' | 'target';

export interface Mutant {
  readonly kind: MutantKind;
  /** What was taken out, for a person: 'condition "guard" of gate "ready-to-start"'. */
  readonly name: string;
  /** Where it stood; of a gate, every step behind it. */
  readonly steps: readonly string[];
  /** The fact that is no longer asked, begun or ended, with its state; none for a whole gate, hands or a target. */
  readonly fact?: { readonly id: string; readonly state: string };
  /** The step that an instructor need no longer release. */
  readonly release?: string;
  /** The flow file without it. */
  readonly file: FlowFile;
}

/** Every condition, limit, effect, remedy and target, taken out one at a time. */
export function mutantsOf(file: FlowFile): readonly Mutant[] {
  return [
    ...gateMutants(file),
    ...limitMutants(file),
    ...file.steps.flatMap((_, index) => stepMutants(file, index)),
  ];
}

function gateMutants(file: FlowFile): readonly Mutant[] {
  return Object.entries(file.gates).flatMap(([gate, facts]) =>
    Object.entries(facts).map(
      ([fact, state]): Mutant => ({
        kind: 'condition',
        name: `condition "${fact}" of gate "${gate}"`,
        steps: file.steps.filter((step) => step.gates.includes(gate)).map(({ id }) => id),
        fact: { id: fact, state },
        file: { ...file, gates: { ...file.gates, [gate]: without(facts, fact) } },
      }),
    ),
  );
}

type Step = FlowFile['steps'][number];

function stepMutants(file: FlowFile, index: number): readonly Mutant[] {
  const step = file.steps[index];
  if (!step) return [];
  const made: Make = (kind, name, change, fact) => ({
    kind,
    name: `${name} of step "${step.id}"`,
    steps: [step.id],
    ...(fact ? { fact } : {}),
    file: {
      ...file,
      steps: file.steps.map((one, at) => (at === index ? changed(one, change) : one)),
    },
  });
  return [
    ...step.gates.map((gate) =>
      made('condition', `gate "${gate}"`, { gates: step.gates.filter((one) => one !== gate) }),
    ),
    ...eachFact(step.needs, (fact, needs) =>
      made('condition', `need "${fact.id}"`, { needs }, fact),
    ),
    ...(step.release
      ? [{ ...made('condition', 'release', { release: undefined }), release: step.id }]
      : []),
    ...eachFact(step.remedies, ({ id, state }, remedies) =>
      made('remedy', `remedy "${id}"`, { remedies }, { id, state }),
    ),
    ...effectMutants(step, made),
    ...targetMutants(step, made),
  ];
}

type TakenFact = NonNullable<Mutant['fact']>;
type Make = (kind: MutantKind, name: string, change: object, fact?: TakenFact) => Mutant;

function effectMutants(step: Step, made: Make): readonly Mutant[] {
  const near = step.hands ? [made('effect', 'hands', { hands: false })] : [];
  const moment = step.moment
    ? [made('effect', `moment "${step.moment}"`, { moment: undefined })]
    : [];
  const asked = (key: 'facts' | 'begins' | 'ends', facts: Readonly<Record<string, string>>) =>
    eachFact(facts, (fact, rest) => made('effect', `${key} "${fact.id}"`, { [key]: rest }, fact));
  if (step.kind === 'check') return [...near, ...moment, ...asked('facts', step.facts)];
  if (step.kind !== 'do') return [...near, ...moment];
  return [...near, ...moment, ...asked('begins', step.begins), ...asked('ends', step.ends)];
}

/** A target that is taken out leads to the step itself: the shortest way to get stuck. */
function targetMutants(step: Step, made: Make): readonly Mutant[] {
  const self = (key: string) => made('target', `target "${key}"`, { [key]: step.id });
  if (step.kind === 'choose') {
    return step.options.map((option) =>
      made('target', `option "${option.id}"`, {
        options: step.options.map((one) => (one === option ? { ...one, next: step.id } : one)),
      }),
    );
  }
  if (step.kind === 'inspect') return [self('within'), self('rework'), self('lost')];
  return step.kind === 'passes' ? [self('next'), self('lost')] : [self('next')];
}

function eachFact(
  facts: Readonly<Record<string, string>>,
  make: (fact: TakenFact, rest: Readonly<Record<string, string>>) => Mutant,
): readonly Mutant[] {
  return Object.entries(facts).map(([id, state]) => make({ id, state }, without(facts, id)));
}

function without(facts: Readonly<Record<string, string>>, fact: string): Record<string, string> {
  return Object.fromEntries(Object.entries(facts).filter(([one]) => one !== fact));
}

function changed(step: Step, change: object): Step {
  return { ...step, ...change };
}
