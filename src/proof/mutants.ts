/** Flows with one thing taken out: what a careless edit could do. The prover must find each one that matters. */

import type { FlowFile } from '../flow/index.ts';

export type MutantKind = 'condition' | 'effect' | 'remedy' | 'target';

export interface Mutant {
  readonly kind: MutantKind;
  /** What was taken out, for a person: 'condition "guard" of gate "ready-to-start"'. */
  readonly name: string;
  readonly step: string;
  /** The flow file without it. */
  readonly file: FlowFile;
}

/** Every condition, effect, remedy and target, taken out one at a time. */
export function mutantsOf(file: FlowFile): readonly Mutant[] {
  return [...gateMutants(file), ...file.steps.flatMap((_, index) => stepMutants(file, index))];
}

function gateMutants(file: FlowFile): readonly Mutant[] {
  return Object.entries(file.gates).flatMap(([gate, facts]) =>
    Object.keys(facts).map(
      (fact): Mutant => ({
        kind: 'condition',
        name: `condition "${fact}" of gate "${gate}"`,
        step: file.steps.find((step) => step.gates.includes(gate))?.id ?? '',
        file: { ...file, gates: { ...file.gates, [gate]: without(facts, fact) } },
      }),
    ),
  );
}

type Step = FlowFile['steps'][number];

function stepMutants(file: FlowFile, index: number): readonly Mutant[] {
  const step = file.steps[index];
  if (!step) return [];
  const made = (kind: MutantKind, name: string, change: object): Mutant => ({
    kind,
    name: `${name} of step "${step.id}"`,
    step: step.id,
    file: {
      ...file,
      steps: file.steps.map((one, at) => (at === index ? changed(one, change) : one)),
    },
  });
  return [
    ...step.gates.map((gate) =>
      made('condition', `gate "${gate}"`, { gates: step.gates.filter((one) => one !== gate) }),
    ),
    ...eachFact(step.needs, (fact, needs) => made('condition', `need "${fact}"`, { needs })),
    ...eachFact(step.remedies, (fact, remedies) =>
      made('remedy', `remedy "${fact}"`, { remedies }),
    ),
    ...effectMutants(step, made),
    ...targetMutants(step, made),
  ];
}

type Make = (kind: MutantKind, name: string, change: object) => Mutant;

function effectMutants(step: Step, made: Make): readonly Mutant[] {
  const hands = step.hands ? [made('effect', 'hands', { hands: false })] : [];
  const moment = step.moment
    ? [made('effect', `moment "${step.moment}"`, { moment: undefined })]
    : [];
  if (step.kind === 'check') {
    const facts = eachFact(step.facts, (fact, rest) =>
      made('effect', `"${fact}"`, { facts: rest }),
    );
    return [...hands, ...moment, ...facts];
  }
  if (step.kind !== 'do') return [...hands, ...moment];
  return [
    ...hands,
    ...moment,
    ...eachFact(step.begins, (fact, begins) => made('effect', `begin "${fact}"`, { begins })),
    ...eachFact(step.ends, (fact, ends) => made('effect', `end "${fact}"`, { ends })),
  ];
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
  make: (fact: string, rest: Readonly<Record<string, string>>) => Mutant,
): readonly Mutant[] {
  return Object.keys(facts).map((fact) => make(fact, without(facts, fact)));
}

function without(facts: Readonly<Record<string, string>>, fact: string): Record<string, string> {
  return Object.fromEntries(Object.entries(facts).filter(([one]) => one !== fact));
}

function changed(step: Step, change: object): Step {
  return { ...step, ...change };
}
