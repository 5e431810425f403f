/** What is said to be walked of a chart, against a count of every situation one by one. */

import { describe, expect, it } from 'vitest';
import {
  beginJob,
  type FlowEvent,
  type FlowSnapshot,
  isLoss,
  type Job,
  positionOf,
} from '../../src/flow/index.ts';
import { eventsAt } from '../../src/proof/alphabet.ts';
import { identityOf } from '../../src/proof/identity.ts';
import { prove } from '../../src/proof/index.ts';
import { stepperOf } from '../../src/proof/stepper.ts';
import { askedStates } from '../../src/proof/told-apart.ts';
import { jobOf } from './both-walks.ts';

/** One situation, at rest or between two small steps; by arrow, where it leads. */
interface Node {
  readonly step: string;
  readonly inner: string;
  readonly arrows: Map<string, Set<Node>>;
  /** The same at rest, where nothing follows by itself. */
  settled: Node | undefined;
}

/** Every situation of a job, played one by one. */
function graphOf(job: Job): readonly Node[] {
  const step = stepperOf(job.machine);
  const nodes = new Map<string, Node>();
  const open: [FlowSnapshot, Node][] = [];
  const nodeOf = (snapshot: FlowSnapshot, rests: boolean): Node => {
    const key = `${rests} ${identityOf(snapshot)}`;
    const old = nodes.get(key);
    if (old) return old;
    const { step: at } = positionOf(snapshot);
    const value = snapshot.value as Readonly<Record<string, unknown>>;
    const inner = JSON.stringify(value[at]) ?? '';
    const made: Node = { step: at, inner, arrows: new Map(), settled: undefined };
    nodes.set(key, made);
    if (rests) open.push([snapshot, made]);
    else {
      const next = step.follow(snapshot);
      if (next === snapshot) made.settled = nodeOf(snapshot, true);
      else lead(made, '(by itself)', nodeOf(next, false));
    }
    return made;
  };
  const lead = (from: Node, event: string, to: Node) => {
    const end = to.step === from.step ? to.inner : `out:${to.step}`;
    const name = `${from.inner} ${event} → ${end}`;
    from.arrows.set(name, (from.arrows.get(name) ?? new Set()).add(to));
  };
  /** A loss that is believed already: to the walk it is as if nothing were known, and so it is taken. */
  const isToldAgain = (event: FlowEvent, { context }: FlowSnapshot) =>
    event.type === 'fact' &&
    isLoss(job.flow.kind, event.fact, event.state) &&
    context.facts[event.fact] === event.state &&
    !asked.get(event.fact)?.has(event.state);
  const asked = askedStates(job);
  nodeOf(beginJob(job), true);
  for (const [snapshot, node] of open) {
    for (const event of eventsAt(job, snapshot)) {
      if (step(snapshot, event) === snapshot) {
        if (isToldAgain(event, snapshot)) lead(node, 'fact', nodeOf(snapshot, false));
        continue;
      }
      lead(node, event.type, nodeOf(step.first(snapshot, event), false));
    }
  }
  return [...nodes.values()].filter(({ inner }) => inner !== '');
}

/** With all that is come to without leaving the state. */
function closed(nodes: Iterable<Node>): ReadonlySet<Node> {
  const all = new Set(nodes);
  for (const node of all) {
    if (node.settled) all.add(node.settled);
    for (const [, ends] of node.arrows) {
      for (const end of ends) if (end.step === node.step && end.inner === node.inner) all.add(end);
    }
  }
  return all;
}

function pathsFrom(nodes: ReadonlySet<Node>, seen: ReadonlySet<string>): number {
  const next = new Map<string, Set<Node>>();
  for (const node of nodes) {
    for (const [name, ends] of node.arrows) {
      const to = name.split(' → ')[1] ?? '';
      if (seen.has(to)) continue;
      const some = next.get(name) ?? new Set();
      for (const end of ends) some.add(end);
      next.set(name, some);
    }
  }
  return [...next].reduce((count, [name, ends]) => {
    const to = name.split(' → ')[1] ?? '';
    const inside = to.startsWith('out:') ? 0 : pathsFrom(closed(ends), new Set([...seen, to]));
    return count + 1 + inside;
  }, 0);
}

function countedPlainly(job: Job) {
  const nodes = graphOf(job);
  const sum = (of: (step: string, own: readonly Node[]) => number) =>
    job.flow.file.steps.reduce(
      (total, { id }) =>
        total +
        of(
          id,
          nodes.filter(({ step }) => step === id),
        ),
      0,
    );
  const states = sum((_, own) => new Set(own.map(({ inner }) => inner)).size);
  const transitions = sum((_, own) => new Set(own.flatMap((one) => [...one.arrows.keys()])).size);
  const pairs = sum((step, own) => {
    const found = new Set<string>();
    for (const node of own) {
      for (const [first, ends] of node.arrows) {
        for (const end of ends) {
          if (end.step !== step) continue;
          const after = [...end.arrows.keys(), ...(end.settled?.arrows.keys() ?? [])];
          for (const second of after) found.add(`${first} | ${second}`);
        }
      }
    }
    return found.size;
  });
  const paths = sum((step, own) => {
    const gated = Object.keys(job.plans.get(step)?.gate ?? {}).length > 0;
    const kind = job.flow.steps.get(step)?.kind;
    const first = gated ? '"gate"' : kind === 'cut' ? '"start"' : '"open"';
    return pathsFrom(closed(own.filter(({ inner }) => inner === first)), new Set([first]));
  });
  return { states, transitions, pairs, paths };
}

const off = { needs: { motor: 'off' } };
const step = (id: string, more: object) => ({ id, title: id, say: 'Do it.', ...more });
const cut = step('cut', {
  kind: 'cut',
  needs: { motor: 'off', tool: 'clear', guard: 'closed' },
  speed: { is: 100, unit: 'rpm' },
});

const flows = {
  'two checks': [
    step('look', { kind: 'check', ...off, facts: { guard: 'closed' } }),
    step('last', { kind: 'tell', ...off }),
  ],
  'a cut with a fault walk': [cut, step('last', { kind: 'tell', ...off })],
  'hands that open the guard': [
    step('reach', { kind: 'do', ...off, hands: true, ends: { guard: 'closed' } }),
    step('last', { kind: 'tell', ...off }),
  ],
};

describe('what the proof says it has walked', () => {
  it.each(Object.entries(flows))('of %s is what comes of playing every situation', (_, steps) => {
    const head = { followrest: 'flow', version: 1, id: 'tiny', revision: 1, title: 'T', about: '' };
    const job = jobOf({ ...head, machineKind: 'lathe', steps });
    if (!job) throw new Error('The reader refuses it.');
    const { states, transitions, pairs, paths } = prove(job).coverage?.() ?? {};
    expect({
      states: states?.walked,
      transitions: transitions?.walked,
      pairs: pairs?.walked,
      paths: paths?.walked,
    }).toEqual(countedPlainly(job));
    expect(transitions?.of).toBeGreaterThan(transitions?.walked ?? 0);
  });
});
