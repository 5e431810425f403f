/** The words that lead through the shipped job, by part. */

export const afterHands = ['guard closed', 'hands clear'];
export const turned = ['spindle running', 'tool clear', 'spindle stopped'];

export const protect = [
  'next',
  'glasses on',
  'nothing loose',
  'stop released',
  'spindle stopped',
  'card agrees',
];
export const mount = [
  '25',
  'correct',
  'work clamped',
  'key out',
  'tool locked',
  'tailstock back',
  'turns free',
];
export const face = ['tool clear', 'speed set', ...afterHands, ...turned];
export const touch = turned;
/** One pass; the first has its gate met already. */
export const pass = (size: string, first = false) => [
  ...(first ? [] : afterHands),
  'next',
  ...turned,
  size,
  'correct',
];
export const passes = [
  ...pass('22.16', true),
  ...pass('19.32'),
  ...pass('16.48'),
  ...pass('15.98'),
];
export const chamfer = [...afterHands, ...turned];
export const drillHole = [
  'tailstock locked',
  'speed set',
  ...afterHands,
  ...turned,
  'tailstock locked',
  ...afterHands,
  ...turned,
  '20',
  'correct',
];
export const turnRound = [
  'tailstock back',
  'work clamped',
  'key out',
  'turns free',
  '73',
  'correct',
];
export const faceHead = [
  'speed set',
  ...afterHands,
  ...turned,
  '71.5',
  'correct',
  ...afterHands,
  ...turned,
  '70',
  'correct',
];
export const takeOut = ['work out', 'key out', 'next'];
export const finish = ['15.98', 'correct', 'next'];

export const wholeJob = [
  ...protect,
  ...mount,
  ...face,
  ...touch,
  ...passes,
  ...chamfer,
  ...drillHole,
  ...turnRound,
  ...faceHead,
  ...takeOut,
  ...finish,
];

/** Everything a start needs, answered anew after a break; the spindle comes first and alone. */
export const allFacts = [
  'glasses on',
  'nothing loose',
  'stop released',
  'work clamped',
  'key out',
  'turns free',
  'tool locked',
  'tool clear',
  'tailstock back',
  'guard closed',
  'hands clear',
];
