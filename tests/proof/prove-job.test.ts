import { expect, it } from 'vitest';
import { releaseFirst } from '../../src/flow/index.ts';
import { proveJob } from '../../src/proof/index.ts';
import { textOf } from '../flow/shipped.ts';

const gates = { ready: { spindle: 'stopped' } };
const steps = [
  { id: 'look', title: 'Look', kind: 'tell', say: 'Look.', gates: ['ready'] },
  { id: 'face', title: 'Face', kind: 'cut', say: 'Face it.', speed: { is: 100, unit: 'rpm' } },
];
const head = { followrest: 'flow', version: 1, id: 'small', revision: 1, title: 'S', about: '' };
const flow = JSON.stringify({ ...head, machineKind: 'lathe', gates, steps });
const texts = {
  kind: textOf('kinds/lathe.json'),
  card: textOf('machines/metric-lathe.json'),
  inputs: {},
};
const proofOf = (asked: object) => {
  const result = proveJob({ flow, ...texts, ...asked });
  if (!result.ok) throw new Error(result.faults.join('\n'));
  return result.proof;
};

it('a job is proved with the release that it is to begin with, and without it where none is asked for', () => {
  const released = proofOf({ releaseFirst: true });
  expect(released).toEqual(proofOf({ flow: releaseFirst(flow) }));
  expect(released.states).toBeGreaterThan(proofOf({}).states);
  const words = released.problems.flatMap(({ turns }) => turns.map(({ says }) => says));
  expect(words).toContain('release');
});
