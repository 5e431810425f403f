/** Machine kinds with one thing taken out: a hazard, a part of one, or what makes a kind notice that something was lost. */

import type { Condition, Fact, FaultWalk, MachineKind, WantedFacts } from '../flow/index.ts';

type KindMutantKind =
  /** A hazard, or one of the things it forbids: the kind sees less. */
  | 'weaker'
  /** What limits a hazard to some moments or facts: the kind sees more, and may forbid what is good. */
  | 'stricter'
  | 'forget'
  | 'begin'
  | 'ask'
  | 'loss'
  | 'remedy';

export interface KindMutant {
  readonly kind: KindMutantKind;
  /** What was taken out, for a person. */
  readonly name: string;
  /** The hazard it was taken out of. */
  readonly hazard?: string;
  /** The fact that can no longer be reported, is no longer forgotten or asked for. */
  readonly fact?: string;
  readonly file: MachineKind;
}

export function kindMutantsOf(file: MachineKind): readonly KindMutant[] {
  return [...hazardMutants(file), ...factMutants(file), ...walkMutants(file)];
}

function hazardMutants(file: MachineKind): readonly KindMutant[] {
  return file.hazards.flatMap((hazard): readonly KindMutant[] => {
    const others = file.hazards.filter((one) => one !== hazard);
    const whole: KindMutant = {
      kind: 'weaker',
      name: `hazard ${hazard.id}`,
      hazard: hazard.id,
      file: { ...file, hazards: others },
    };
    const parts = lessOf(hazard.never).map(({ kind, name, left }): KindMutant => {
      const changed = { ...hazard, never: left };
      const hazards = file.hazards.map((one) => (one === hazard ? changed : one));
      return {
        kind,
        name: `"${name}" of hazard ${hazard.id}`,
        hazard: hazard.id,
        file: { ...file, hazards },
      };
    });
    return [whole, ...parts];
  });
}

interface Less {
  readonly kind: 'weaker' | 'stricter';
  readonly name: string;
  readonly left: Condition;
}

/** The condition without each of its parts in turn; a list keeps its last one. */
function lessOf(condition: Condition): readonly Less[] {
  if (!('all' in condition || 'any' in condition)) return [];
  const all = 'all' in condition;
  const list = all ? condition.all : condition.any;
  const made = (parts: readonly Condition[]): Condition => (all ? { all: parts } : { any: parts });
  const without =
    list.length === 1
      ? []
      : list.map((one): Less => {
          const left = made(list.filter((other) => other !== one));
          return { kind: all ? 'stricter' : 'weaker', name: toldPart(one), left };
        });
  const within = list.flatMap((one, at) =>
    lessOf(one).map(({ kind, name, left }): Less => {
      return { kind, name, left: made(list.map((other, index) => (index === at ? left : other))) };
    }),
  );
  return [...without, ...within];
}

function toldPart(condition: Condition): string {
  if ('all' in condition) return condition.all.map(toldPart).join(' and ');
  if ('any' in condition) return condition.any.map(toldPart).join(' or ');
  if ('moment' in condition) return condition.moment;
  if ('asking' in condition) return `asking ${condition.asking}`;
  if ('speedAbove' in condition) return `speed above ${condition.speedAbove}`;
  return 'is' in condition
    ? `${condition.fact} ${condition.is}`
    : `${condition.fact} not ${condition.not}`;
}

function factMutants(file: MachineKind): readonly KindMutant[] {
  return file.facts.flatMap((fact): readonly KindMutant[] => {
    const made = (kind: KindMutantKind, name: string, changed: Fact): KindMutant => ({
      kind,
      name,
      fact: fact.id,
      file: { ...file, facts: file.facts.map((one) => (one === fact ? changed : one)) },
    });
    const losses = fact.states
      .filter((state) => state.loss)
      .map((state) => {
        const states = fact.states.map((one) => (one === state ? { ...one, loss: false } : one));
        return made('loss', `loss "${state.word}"`, { ...fact, states });
      });
    const forget = fact.handsForget
      ? [made('forget', `handsForget of "${fact.id}"`, { ...fact, handsForget: false })]
      : [];
    const remedy = made('remedy', `remedy of "${fact.id}"`, { ...fact, remedy: '' });
    return [...losses, ...forget, remedy];
  });
}

function walkMutants(file: MachineKind): readonly KindMutant[] {
  return file.walks.flatMap((walk): readonly KindMutant[] => {
    const made = (kind: KindMutantKind, name: string, changed: FaultWalk): KindMutant => {
      const walks = file.walks.map((one) => (one === walk ? changed : one));
      return { kind, name: `${name} walk "${walk.id}"`, file: { ...file, walks } };
    };
    const begins = Object.keys(walk.begins).map((fact) =>
      made('begin', `begins "${fact}" of`, { ...walk, begins: without(walk.begins, fact) }),
    );
    const needs = walk.items.flatMap((item) =>
      Object.keys(item.needs).map((fact) => {
        const less = { ...item, needs: without(item.needs, fact) };
        const items = walk.items.map((one) => (one === item ? less : one));
        return made('ask', `need "${fact}" of "${item.id}" in`, { ...walk, items });
      }),
    );
    return [...begins, ...needs];
  });
}

function without(wanted: WantedFacts, fact: string): WantedFacts {
  const { [fact]: _, ...rest } = wanted;
  return rest;
}
