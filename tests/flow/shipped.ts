/** The shipped files and a small flow of its own, ready for tests. */

import { readFileSync } from 'node:fs';
import {
  type Card,
  compileJob,
  type Flow,
  type Job,
  type JobInputs,
  type MachineKind,
  readCard,
  readFlow,
  readFlowValue,
  readKind,
  resolveFlow,
} from '../../src/flow/index.ts';

const flows = new URL('../../flows/', import.meta.url);

export function textOf(path: string): string {
  return readFileSync(new URL(path, flows), 'utf8');
}

export function latheKind(): MachineKind {
  const read = readKind('lathe.json', textOf('kinds/lathe.json'));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

export const kinds = new Map([['lathe', latheKind()]]);

export function cardNamed(name: 'metric-lathe' | 'inch-lathe'): Card {
  const read = readCard(`${name}.json`, textOf(`machines/${name}.json`));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

export function hingePin(): Flow {
  const read = readFlow('gate-hinge-pin.json', textOf('gate-hinge-pin.json'), kinds);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.flow;
}

export function jobOf(flow: Flow, inputs: JobInputs = {}, card = cardNamed('metric-lathe')): Job {
  const made = compileJob(flow, card, inputs);
  if (!made.ok) throw new Error(made.faults.join('\n'));
  return made.job;
}

/** Everything a start needs on the lathe. */
export const readyToStart = {
  eyes: 'on',
  clothing: 'secure',
  'emergency-stop': 'released',
  spindle: 'stopped',
  work: 'clamped',
  'chuck-key': 'out',
  'turned-by-hand': 'free',
  'tool-lock': 'locked',
  'tool-place': 'clear',
  guard: 'closed',
  hands: 'clear',
};

const mm = (is: number) => ({ is, unit: 'mm' });

/** A flow of the given steps, with one gate "ready" and a speed of 300. */
export function flowWith(steps: readonly Record<string, unknown>[], more: object = {}): unknown {
  return {
    followrest: 'flow',
    version: 1,
    id: 'small',
    revision: 1,
    title: 'Small',
    about: '',
    machineKind: 'lathe',
    gates: { ready: readyToStart },
    steps,
    ...more,
  };
}

export const tell = (id: string, more: object = {}) => ({
  kind: 'tell',
  id,
  title: id,
  say: `Say next at ${id}.`,
  ...more,
});

export const cut = (id: string, more: object = {}) => ({
  kind: 'cut',
  id,
  title: id,
  say: 'Cut.',
  gates: ['ready'],
  speed: { is: 300, unit: 'rpm' },
  ...more,
});

export const passes = (id: string, more: object = {}) => ({
  kind: 'passes',
  id,
  title: id,
  say: 'Cut along.',
  gates: ['ready'],
  speed: { is: 300, unit: 'rpm' },
  reading: { id: 'size', label: 'Size', unit: 'mm', decimals: 2, min: mm(5), max: mm(41) },
  side: 'outside',
  from: mm(25),
  finish: mm(20),
  lower: mm(19.9),
  upper: mm(20.1),
  deepest: mm(1),
  finishAllowance: mm(0.5),
  lost: 'end',
  ...more,
});

export const inspect = (id: string, more: object = {}) => ({
  kind: 'inspect',
  id,
  title: id,
  say: 'Measure.',
  needs: { spindle: 'stopped' },
  reading: { id: 'final', label: 'Final', unit: 'mm', decimals: 2, min: mm(5), max: mm(41) },
  side: 'outside',
  lower: mm(19.9),
  upper: mm(20.1),
  rework: 'end',
  lost: 'end',
  ...more,
});

export function smallFlow(steps: readonly Record<string, unknown>[], more: object = {}): Flow {
  const read = resolveFlow(readFlowValue('small.json', flowWith(steps, more)), kinds);
  if (!read.ok) throw new Error(JSON.stringify(read.faults, null, 1));
  return read.flow;
}
