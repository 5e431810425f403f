/** What must hold in every state that a run comes to, whatever was said. */

import type { RunState } from '../../../src/bench/index.ts';
import { type Phase, positionOf, type Step } from '../../../src/flow/index.ts';

type Stands = Pick<RunState, 'job' | 'snapshot'>;

/** The claim, the fact, and the states of it that keep the claim. */
type Must = readonly [claim: string, fact: string, ...states: string[]];

interface Rules {
  readonly turning: readonly Must[];
  readonly start: readonly Must[];
  readonly cutting: readonly Must[];
  readonly handsIn: Must;
  readonly measuring: Must;
  readonly end: Must;
  /** What must be so beside, where the machine is left. */
  readonly left?: Must;
  /** By the moment that a step names. */
  readonly moments: Readonly<Record<string, readonly Must[]>>;
  /** While a step asks for this fact. */
  readonly asking: Readonly<Record<string, readonly Must[]>>;
  /** By the fault walk, as soon as its trouble is named: what nobody may believe any more. */
  readonly doubted: Readonly<Record<string, readonly Must[]>>;
  /** While hands change one of these, guard and hands are not believed. */
  readonly forget: readonly [claim: string, ...facts: string[]];
  readonly limits: readonly (readonly [claim: string, limit: 'chuckLimit' | 'topSpeed'])[];
  readonly workLimit: string;
}

/** Written here by hand for each machine kind, from the shop's rules and not from its file. Source: common practice. */
const rulesOf: Readonly<Record<string, Rules>> = {
  lathe: {
    turning: [
      ['LATHE-GUARD', 'guard', 'closed'],
      ['LATHE-KEY', 'chuck-key', 'out'],
      ['LATHE-WORK', 'work', 'clamped'],
      ['LATHE-TOOL', 'tool-lock', 'locked'],
      ['LATHE-EYES', 'eyes', 'on'],
      ['LATHE-CLOTHING', 'clothing', 'secure'],
      ['LATHE-STOP', 'emergency-stop', 'released'],
      ['LATHE-SPEED-SET', 'speed', 'set'],
      ['LATHE-TAILSTOCK', 'tailstock', 'back', 'locked'],
    ],
    start: [
      ['LATHE-HANDS', 'hands', 'clear'],
      ['LATHE-TOUCHING', 'tool-place', 'clear'],
      ['LATHE-BY-HAND', 'turned-by-hand', 'free'],
      ['LATHE-STANDSTILL', 'spindle', 'stopped'],
    ],
    cutting: [['LATHE-CUT-STOPPED', 'spindle', 'running']],
    handsIn: ['LATHE-HANDS-IN', 'spindle', 'stopped'],
    measuring: ['LATHE-MEASURE', 'spindle', 'stopped'],
    end: ['LATHE-LEAVE', 'spindle', 'stopped'],
    moments: {
      'work-out': [
        ['LATHE-TAKE-OUT', 'tool-place', 'clear'],
        ['LATHE-TAKE-OUT', 'tailstock', 'back'],
      ],
      'turn-round': [
        ['LATHE-TAKE-OUT', 'tool-place', 'clear'],
        ['LATHE-TAKE-OUT', 'tailstock', 'back'],
      ],
    },
    asking: {
      'turned-by-hand': [
        ['LATHE-TURN-KEY', 'chuck-key', 'out'],
        ['LATHE-TURN-KEY', 'work', 'clamped'],
      ],
    },
    doubted: {},
    forget: [
      'LATHE-HANDS-FORGET',
      ...['work', 'chuck-key', 'turned-by-hand', 'tool-lock', 'tailstock'],
    ],
    limits: [
      ['LATHE-CHUCK-LIMIT', 'chuckLimit'],
      ['LATHE-CARD-LIMIT', 'topSpeed'],
    ],
    workLimit: 'LATHE-WORK-LIMIT',
  },
  'drill-press': {
    turning: [
      ['DRILL-GUARD', 'guard', 'closed'],
      ['DRILL-COVER', 'belt-cover', 'closed'],
      ['DRILL-KEY', 'chuck-key', 'out'],
      ['DRILL-WORK', 'work', 'clamped'],
      ['DRILL-TIGHT', 'drill-lock', 'tight'],
      ['DRILL-TABLE', 'table', 'locked'],
      ['DRILL-EYES', 'eyes', 'on'],
      ['DRILL-CLOTHING', 'clothing', 'secure'],
      ['DRILL-STOP', 'emergency-stop', 'released'],
      ['DRILL-SPEED-SET', 'speed', 'set'],
    ],
    start: [
      ['DRILL-HANDS', 'hands', 'clear'],
      ['DRILL-TOUCHING', 'drill-place', 'clear'],
      ['DRILL-STANDSTILL', 'spindle', 'stopped'],
    ],
    cutting: [['DRILL-CUT-STOPPED', 'spindle', 'running']],
    handsIn: ['DRILL-HANDS-IN', 'spindle', 'stopped'],
    measuring: ['DRILL-MEASURE', 'spindle', 'stopped'],
    end: ['DRILL-LEAVE', 'spindle', 'stopped'],
    moments: {
      'belt-change': [['DRILL-BELT', 'main-switch', 'off']],
      'work-out': [['DRILL-TAKE-OUT', 'drill-place', 'clear']],
    },
    asking: { 'belt-cover': [['DRILL-BELT', 'main-switch', 'off']] },
    doubted: {},
    forget: ['DRILL-HANDS-FORGET', ...['work', 'drill-lock', 'chuck-key', 'table', 'belt-cover']],
    limits: [
      ['DRILL-CHUCK-LIMIT', 'chuckLimit'],
      ['DRILL-CARD-LIMIT', 'topSpeed'],
    ],
    workLimit: 'DRILL-WORK-LIMIT',
  },
  // From memory: ISO 16090-1 and HSE HSG129, in general, for guard, cutter and work; the rest is common practice.
  mill: {
    turning: [
      ['MILL-GUARD', 'guard', 'closed'],
      ['MILL-SPANNER', 'drawbar-spanner', 'off'],
      ['MILL-WORK', 'work', 'clamped'],
      ['MILL-HANDLE', 'vice-handle', 'off'],
      ['MILL-CUTTER', 'cutter-lock', 'tight'],
      ['MILL-SLIDES', 'slides', 'locked'],
      ['MILL-CLIMB', 'feed-way', 'conventional'],
      ['MILL-EYES', 'eyes', 'on'],
      ['MILL-CLOTHING', 'clothing', 'secure'],
      ['MILL-STOP', 'emergency-stop', 'released'],
      ['MILL-SPEED-SET', 'speed', 'set'],
    ],
    start: [
      ['MILL-HANDS', 'hands', 'clear'],
      ['MILL-TOUCHING', 'cutter-place', 'clear'],
      ['MILL-STANDSTILL', 'spindle', 'stopped'],
    ],
    cutting: [['MILL-CUT-STOPPED', 'spindle', 'running']],
    handsIn: ['MILL-HANDS-IN', 'spindle', 'stopped'],
    measuring: ['MILL-MEASURE', 'spindle', 'stopped'],
    end: ['MILL-LEAVE', 'spindle', 'stopped'],
    moments: { 'work-out': [['MILL-TAKE-OUT', 'cutter-place', 'clear']] },
    asking: {},
    doubted: {},
    forget: ['MILL-HANDS-FORGET', ...['work', 'vice-handle', 'cutter-lock', 'drawbar-spanner']],
    limits: [
      ['MILL-HOLDER-LIMIT', 'chuckLimit'],
      ['MILL-CARD-LIMIT', 'topSpeed'],
    ],
    workLimit: 'MILL-WORK-LIMIT',
  },
  // From memory: EN ISO 16093, 29 CFR 1910.212 and HSE's advice on band saws, in general, for covers, guides, work,
  // support and standstill; the rest is common practice.
  'band-saw': {
    turning: [
      ['SAW-COVERS', 'guard', 'closed'],
      ['SAW-SIGNED', 'signed', 'signed'],
      ['SAW-GUIDES', 'guides', 'near'],
      ['SAW-WORK', 'work', 'clamped'],
      ['SAW-SUPPORT', 'support', 'on'],
      ['SAW-GAUGE', 'gauge', 'away'],
      ['SAW-EYES', 'eyes', 'on'],
      ['SAW-CLOTHING', 'clothing', 'secure'],
      ['SAW-GLOVES', 'gloves', 'off'],
      ['SAW-STOP', 'emergency-stop', 'released'],
      ['SAW-SPEED-SET', 'speed', 'set'],
    ],
    start: [
      ['SAW-HANDS', 'hands', 'clear'],
      ['SAW-TOUCHING', 'blade-place', 'clear'],
      ['SAW-STANDSTILL', 'blade', 'stopped'],
    ],
    cutting: [['SAW-CUT-STOPPED', 'blade', 'running']],
    handsIn: ['SAW-HANDS-IN', 'blade', 'stopped'],
    measuring: ['SAW-MEASURE', 'blade', 'stopped'],
    end: ['SAW-LEAVE', 'blade', 'stopped'],
    left: ['SAW-LEFT-ON', 'main-switch', 'off'],
    moments: {
      'bar-move': [['SAW-BAR-MOVE', 'blade-place', 'clear']],
      'clear-swarf': [['SAW-ISOLATED', 'main-switch', 'off']],
      reach: [
        ['SAW-HANDS-IN', 'blade', 'stopped'],
        ['SAW-ISOLATED', 'main-switch', 'off'],
      ],
      look: [
        ['SAW-LOOK', 'blade', 'stopped'],
        ['SAW-ISOLATED', 'main-switch', 'off'],
      ],
    },
    asking: {
      guides: [['SAW-ISOLATED', 'main-switch', 'off']],
      gauge: [['SAW-ISOLATED', 'main-switch', 'off']],
    },
    doubted: { 'teeth-strip': [['SAW-SIGNED', 'signed', 'doubtful', 'unknown']] },
    forget: ['SAW-HANDS-FORGET', ...['work', 'support', 'guides', 'gauge', 'blade-place']],
    limits: [['SAW-CARD-LIMIT', 'topSpeed']],
    workLimit: 'SAW-WORK-LIMIT',
  },
  // 29 CFR 1910.215(d)(1): ring test, and a wheel that sounds dead is not used; spindle speed against the mark.
  // From memory: HSE HSG17 (abrasive wheels) and 29 CFR 1910.215 for who mounts, guards and gaps; ANSI B7.1 for the run-up
  // of a minute with nobody in front; NFPA 484 for aluminium dust and sparks. The rest is common practice.
  grinder: {
    turning: [
      ['GRIND-SHIELD', 'guard', 'closed'],
      ['GRIND-COVERS', 'covers', 'tight'],
      ['GRIND-SOUND', 'wheel', 'sound'],
      ['GRIND-SIGNED', 'signed', 'signed'],
      ['GRIND-REST', 'rest', 'close'],
      ['GRIND-TONGUE', 'tongue', 'close'],
      ['GRIND-METAL', 'work', 'steel'],
      ['GRIND-SIDE', 'rim', 'rim'],
      ['GRIND-EYES', 'eyes', 'on'],
      ['GRIND-CLOTHING', 'clothing', 'secure'],
      ['GRIND-STOP', 'emergency-stop', 'released'],
      ['GRIND-MARK', 'speed', 'set'],
    ],
    start: [
      ['GRIND-ASIDE', 'stance', 'aside'],
      ['GRIND-HANDS', 'hands', 'clear'],
      ['GRIND-TOUCHING', 'work-place', 'clear'],
      ['GRIND-STANDSTILL', 'spindle', 'stopped'],
    ],
    cutting: [['GRIND-RUN-UP', 'spindle', 'running']],
    handsIn: ['GRIND-HANDS-IN', 'spindle', 'stopped'],
    measuring: ['GRIND-MEASURE', 'spindle', 'stopped'],
    end: ['GRIND-LEAVE', 'spindle', 'stopped'],
    left: ['GRIND-LEFT-ON', 'main-switch', 'off'],
    moments: {
      'set-gaps': [['GRIND-ISOLATED', 'main-switch', 'off']],
      'clear-dust': [['GRIND-ISOLATED', 'main-switch', 'off']],
    },
    asking: {
      wheel: [['GRIND-ISOLATED', 'main-switch', 'off']],
      covers: [['GRIND-ISOLATED', 'main-switch', 'off']],
      rest: [['GRIND-ISOLATED', 'main-switch', 'off']],
      tongue: [['GRIND-ISOLATED', 'main-switch', 'off']],
    },
    doubted: { 'wheel-shakes': [['GRIND-SIGNED', 'signed', 'doubtful', 'unknown']] },
    forget: ['GRIND-HANDS-FORGET', ...['wheel', 'covers', 'rest', 'tongue']],
    limits: [
      ['GRIND-WHEEL-LIMIT', 'chuckLimit'],
      ['GRIND-CARD-LIMIT', 'topSpeed'],
    ],
    workLimit: 'GRIND-WORK-LIMIT',
  },
};

const turning: ReadonlySet<Phase> = new Set(['start', 'cutting', 'stopping']);

/** The broken rules, each by its claim; none for a state that is as it must be. */
export function brokenRules(state: Stands): readonly string[] {
  const { job, snapshot } = state;
  const rules = rulesOf[job.flow.kind.id];
  if (!rules) return ['no never-rules are written here for this machine kind'];
  const at = positionOf(snapshot);
  const step = job.flow.steps.get(at.step);
  const held = at.phase === 'hold' || at.phase === 'walk';
  const [, power] = rules.handsIn;
  const runs = turning.has(at.phase) || (snapshot.context.facts[power] === 'running' && !held);
  const hands = handsAreIn(step, at);
  const musts: readonly Must[] = [
    ...(runs ? rules.turning : []),
    ...(at.phase === 'start' ? rules.start : []),
    ...(at.phase === 'cutting' ? rules.cutting : []),
    ...(hands ? [rules.handsIn] : []),
    ...(isMeasured(step, at.phase) ? [rules.measuring] : []),
    ...(at.phase === 'end' ? [rules.end, ...(rules.left ? [rules.left] : [])] : []),
    ...(at.phase === 'open' ? openRules(step, rules) : []),
    ...(at.walk?.item === 'settle' ? (rules.doubted[at.walk.id] ?? []) : []),
  ];
  const { facts } = snapshot.context;
  const broken = musts.filter(([, fact, ...wanted]) => !wanted.includes(facts[fact] ?? ''));
  return [
    ...broken.map(([claim, fact]) => `[${claim}] ${fact} is ${facts[fact]}`),
    ...(turning.has(at.phase) ? tooFast(state, step, rules) : []),
  ];
}

function handsAreIn(step: Step | undefined, { phase, walk }: ReturnType<typeof positionOf>) {
  if (phase === 'measure') return true;
  if (walk) return walk.item !== 'settle';
  return phase === 'open' && (step?.hands === true || isMeasured(step, phase));
}

function isMeasured(step: Step | undefined, phase: Phase): boolean {
  if (phase === 'measure') return true;
  return phase === 'open' && (step?.kind === 'measure' || step?.kind === 'inspect');
}

/** In an open step: what its moment and the facts that it asks for want of the others. */
function openRules(step: Step | undefined, rules: Rules): readonly Must[] {
  const asks = Object.keys(
    step?.kind === 'check' ? step.facts : step?.kind === 'do' ? step.ends : {},
  );
  const [claim, ...changed] = rules.forget;
  const forgets = step?.hands === true && asks.some((fact) => changed.includes(fact));
  return [
    ...(rules.moments[step?.moment ?? ''] ?? []),
    ...asks.flatMap((fact) => rules.asking[fact] ?? []),
    ...(forgets
      ? ([
          [claim, 'guard', 'unknown', 'open'],
          [claim, 'hands', 'unknown', 'near'],
        ] as const)
      : []),
  ];
}

function tooFast({ job, snapshot }: Stands, step: Step | undefined, rules: Rules) {
  const { speedSet, readings } = snapshot.context;
  if (step?.kind !== 'cut' && step?.kind !== 'passes') return ['something turns outside a cut'];
  const limits = [
    ...rules.limits.map(([claim, limit]) => [claim, job.card.values[limit]] as const),
    [rules.workLimit, step.workLimit && job.numbers.number(step.workLimit, readings)] as const,
  ];
  return limits.flatMap(([claim, limit]) =>
    speedSet !== null && speedSet <= Number(limit ?? Number.POSITIVE_INFINITY)
      ? []
      : [`[${claim}] ${speedSet} is set, and the limit is ${limit}`],
  );
}
