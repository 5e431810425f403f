/** Takes soundless arcs out of a grammar: chains of them made the engine run out of its memory. Pure. */

interface Arc {
  readonly from: number;
  readonly to: number;
  readonly word: string;
  readonly weight: number;
}

/** The same sentences with the same weights, without soundless arcs; those are taken to weigh nothing. */
export function withoutPasses(arcs: readonly Arc[], end: number): readonly Arc[] {
  const passes = arcs.filter((arc) => arc.word === '');
  if (passes.length === 0) return arcs;
  const spoken = new Map<number, Arc[]>();
  for (const arc of arcs) {
    if (arc.word !== '') spoken.set(arc.from, [...(spoken.get(arc.from) ?? []), arc]);
  }
  const kept = new Map<string, Arc>();
  const keep = (arc: Arc) => {
    const key = `${arc.from} ${arc.to} ${arc.word}`;
    if ((kept.get(key)?.weight ?? 0) < arc.weight) kept.set(key, arc);
  };
  for (const from of new Set(arcs.map((arc) => arc.from))) {
    for (const state of reached(from, passes)) {
      for (const arc of spoken.get(state) ?? []) {
        keep({ ...arc, from });
        if (reached(arc.to, passes).has(end)) keep({ ...arc, from, to: end });
      }
    }
  }
  return [...kept.values()];
}

function reached(from: number, passes: readonly Arc[]): ReadonlySet<number> {
  const states = new Set([from]);
  for (const state of states) {
    for (const pass of passes) if (pass.from === state) states.add(pass.to);
  }
  return states;
}
