/**
 * Judges each mutant of a machine kind by the flows that are written for it. A hazard counts when some careless edit of a
 * flow is found by it alone; everything else counts when a claim breaks in one of the flows.
 */

import {
  beginJob,
  type Card,
  compileJob,
  type Flow,
  type Job,
  type MachineKind,
  readFlowValue,
  readKind,
  resolveFlow,
} from '../flow/index.ts';
import { isSo } from './condition.ts';
import { hunt } from './hunt.ts';
import { type Fate, huntMutant, type JudgedMutant } from './judge-mutants.ts';
import { judgePlans } from './judge-plans.ts';
import { type KindMutant, kindMutantsOf } from './kind-mutants.ts';
import type { Mutant } from './mutants.ts';
import { prove } from './prove.ts';
import { stepperOf } from './stepper.ts';

export interface JudgedKindMutant {
  readonly mutant: KindMutant;
  readonly fate: Fate;
  /** The fault, what is wrong or is found no more, or why it is harmless. */
  readonly why: string;
}

/** A careless edit of one flow, and what came of it. */
export interface JudgedEdit {
  readonly flow: Flow;
  readonly judged: JudgedMutant;
}

interface KindCase {
  /** As it stands in its file. */
  readonly kind: MachineKind;
  /** All flows of that kind. */
  readonly flows: readonly Flow[];
  readonly card: Card;
  /** All edits of these flows, as `judgeMutants` or `huntMutant` judged them. */
  readonly edits: readonly JudgedEdit[];
}

/** Judges all mutants of a kind, or those that `choose` takes, one at a time as they are asked for. */
export function* judgeKindMutants(
  known: KindCase,
  choose: (mutant: KindMutant) => boolean = () => true,
): Generator<JudgedKindMutant> {
  const finds = new Finds(known);
  for (const mutant of kindMutantsOf(known.kind)) if (choose(mutant)) yield judgeOne(mutant, finds);
}

function judgeOne(mutant: KindMutant, finds: Finds): JudgedKindMutant {
  const read = readKind('mutant', JSON.stringify(mutant.file));
  if (!read.ok) return { mutant, fate: 'refused', why: read.faults[0]?.message ?? '' };
  if (mutant.kind === 'weaker') return judgeWeaker(mutant, read.value, finds);
  const broken = finds.brokenWith(read.value);
  if (broken !== undefined) return { mutant, fate: 'broken', why: broken };
  if (mutant.kind === 'stricter') {
    const why = 'It forbids more than before, and that holds too: nothing is let through.';
    return { mutant, fate: 'survives', why };
  }
  const other = otherWord(mutant);
  if (other !== '') return { mutant, fate: 'survives', why: other };
  const open = finds.notProvedWith(read.value);
  return open === undefined
    ? { mutant, fate: 'survives', why: '' }
    : { mutant, fate: 'broken', why: open };
}

/** States of one fact that no hazard and no gate asks for say the same: it is lost. */
function otherWord({ kind, file, fact }: KindMutant): string {
  if (kind !== 'loss') return '';
  const other = file.facts.find(({ id }) => id === fact)?.states.find(({ loss }) => loss);
  return other ? `"${other.word}" reports it as lost as well, at any moment.` : '';
}

function judgeWeaker(mutant: KindMutant, kind: MachineKind, finds: Finds): JudgedKindMutant {
  const known = finds.of(mutant.hazard ?? '');
  const others = new Set<string>();
  for (const { flow, edit } of known) {
    const { problem } = huntMutant(edit, kind, finds.known.card);
    if (!problem) {
      const why = `Nothing else finds ${edit.name} of ${flow.file.id}.`;
      return { mutant, fate: 'broken', why };
    }
    if (problem.claim !== mutant.hazard) others.add(problem.claim);
  }
  if (known.length === 0)
    return { mutant, fate: 'survives', why: whyUnmet(finds.known, mutant.hazard ?? '') };
  const found = others.size > 0 ? `by ${[...others].sort().join(', ')}` : 'by the rest of it';
  const why = `All ${known.length} edits of a flow that meet it are found ${found} as well.`;
  return { mutant, fate: 'survives', why };
}

/** All hazards that are met where a mutant was found out: the first that was told may hide others. */
export function hazardsMet({ problem, job }: JudgedMutant): readonly string[] {
  if (!problem?.events || !job) return [];
  const step = stepperOf(job.machine);
  const end = problem.events.reduce((at, event) => step(at, event), beginJob(job));
  return job.flow.kind.hazards.filter(({ never }) => isSo(never, job, end)).map(({ id }) => id);
}

interface Find {
  readonly flow: Flow;
  readonly edit: Mutant;
}

/** What careless edits of the flows meet, hazard by hazard. */
class Finds {
  private byHazard: Map<string, Find[]> | undefined;

  constructor(readonly known: KindCase) {}

  of(hazard: string): readonly Find[] {
    this.byHazard ??= this.lookForAll();
    return this.byHazard.get(hazard) ?? [];
  }

  private lookForAll(): Map<string, Find[]> {
    const found = new Map<string, Find[]>();
    for (const { flow, judged } of this.known.edits) {
      for (const id of hazardsMet(judged)) {
        found.set(id, [...(found.get(id) ?? []), { flow, edit: judged.mutant }]);
      }
    }
    return found;
  }

  private jobsWith(kind: MachineKind): readonly (Job | string)[] {
    return this.known.flows.map((flow) => {
      const value: unknown = JSON.parse(JSON.stringify(flow.file));
      const read = resolveFlow(readFlowValue(flow.file.id, value), new Map([[kind.id, kind]]));
      if (!read.ok) return read.faults[0]?.message ?? '';
      const made = compileJob(read.flow, this.known.card);
      return made.ok ? made.job : (made.faults[0] ?? '');
    });
  }

  /** What breaks by the way it is written, or is met by a hunt in one of the flows. */
  brokenWith(kind: MachineKind): string | undefined {
    for (const job of this.jobsWith(kind)) {
      if (typeof job === 'string') return job;
      const [written] = judgePlans(job);
      const problem = written ?? hunt(job, [...job.plans.keys()]);
      if (problem) return `${problem.claim}: ${problem.message}`;
    }
    return undefined;
  }

  /** The same by the walk of everything. */
  notProvedWith(kind: MachineKind): string | undefined {
    for (const job of this.jobsWith(kind)) {
      if (typeof job === 'string') return job;
      const { problems, verdict } = prove(job, { paths: false });
      if (verdict !== 'proved') return problems[0]?.message ?? verdict;
    }
    return undefined;
  }
}

/** Why no edit of a flow meets a hazard; empty where nothing says so. */
export function whyUnmet({ kind, edits }: KindCase, hazard: string): string {
  const never = JSON.stringify(kind.hazards.find(({ id }) => id === hazard)?.never ?? null);
  const { power, speed } = kind.roles;
  const looksAt = (fact: string, not: string) => never.includes(JSON.stringify({ fact, not }));
  if (looksAt(speed.fact, speed.set) || looksAt(power.fact, power.on)) {
    return 'The chart of every powered step asks for it by itself: no edit of a flow leaves it out.';
  }
  if (never.includes('"speedAbove"')) {
    return 'No limit that is taken out of a flow lets a speed pass it, with any numbers from the ends of what may be put in.';
  }
  const own = edits.filter(({ judged }) => judged.problem?.claim === 'FORMAT-OWN-ASK').length;
  return own > 0 && looksAt(power.fact, power.off)
    ? `What could lead to it is found as it is written: ${own} edits break FORMAT-OWN-ASK.`
    : '';
}
