/** A flow of any length for measuring: the same ten steps of a turning job, again and again, with ids of their own. */

import type { FlowFile } from '../../src/flow/index.ts';

const mm = (is: number) => ({ is, unit: 'mm' });
const still = { spindle: 'stopped' };
const ready = {
  eyes: 'on',
  clothing: 'secure',
  'emergency-stop': 'released',
  spindle: 'stopped',
  work: 'clamped',
  'chuck-key': 'out',
  'turned-by-hand': 'free',
  'tool-lock': 'locked',
  'tool-place': 'clear',
  tailstock: 'back',
  guard: 'closed',
  hands: 'clear',
};

function round(n: number): readonly object[] {
  const id = (name: string) => `${name}-${n}`;
  const base = (name: string) => ({ id: id(name), title: name, say: `${name}.` });
  const near = { gates: ['still'], hands: true };
  return [
    { kind: 'check', ...base('protect'), facts: { eyes: 'on', clothing: 'secure' } },
    {
      kind: 'do',
      ...base('mount'),
      ...near,
      begins: { work: 'loose', 'chuck-key': 'in', 'turned-by-hand': 'not-yet' },
      ends: { work: 'clamped' },
    },
    { kind: 'check', ...base('key'), ...near, facts: { 'chuck-key': 'out' } },
    {
      kind: 'do',
      ...base('tool'),
      ...near,
      begins: { 'tool-lock': 'loose' },
      ends: { 'tool-lock': 'locked' },
    },
    {
      kind: 'do',
      ...base('tailstock'),
      ...near,
      begins: { tailstock: 'loose' },
      ends: { tailstock: 'back' },
    },
    {
      kind: 'do',
      ...base('by-hand'),
      ...near,
      needs: { work: 'clamped', 'chuck-key': 'out' },
      ends: { 'turned-by-hand': 'free' },
    },
    { kind: 'cut', ...base('face'), gates: ['ready'], speed: { is: 300, unit: 'rpm' } },
    { kind: 'cut', ...base('turn'), gates: ['ready'], speed: { is: 460, unit: 'rpm' } },
    {
      kind: 'measure',
      ...base('measure'),
      gates: ['still'],
      reading: { id: `size${n}`, label: 'Size', unit: 'mm', decimals: 2, min: mm(5), max: mm(40) },
    },
    { kind: 'tell', ...base('look'), gates: ['still'] },
  ];
}

/** `steps` is rounded down to tens. */
export function bigFlow(steps: number): unknown {
  const rounds = Array.from({ length: Math.floor(steps / 10) }, (_, n) => round(n));
  const file: Omit<FlowFile, 'steps'> & { steps: unknown } = {
    followrest: 'flow',
    version: 1,
    id: `big-${steps}`,
    revision: 1,
    title: 'Big',
    about: '',
    machineKind: 'lathe',
    inputs: [],
    workings: [],
    gates: { still, ready },
    pronunciations: {},
    steps: rounds.flat(),
  };
  return file;
}
