/** The latch washer by words: made once whole, then all that can go wrong where it is drilled and parted off. */

import { describe, expect, it } from 'vitest';
import {
  beginRun,
  characteristics,
  driftTold,
  type KeptReading,
  startJob,
} from '../../src/bench/index.ts';
import { positionOf } from '../../src/flow/index.ts';
import { textOf } from '../flow/shipped.ts';
import { head, hears, type Turn, throughGate } from './scripted.ts';

function begun(): Turn {
  const texts = {
    flow: textOf('latch-washer.json'),
    kind: textOf('kinds/lathe.json'),
    card: textOf('machines/metric-lathe.json'),
  };
  const started = startJob(texts, {});
  if (!started.ok) throw new Error(started.faults.join('\n'));
  const run = { ...head, flowId: 'latch-washer', flowTitle: 'Latch washer' };
  const { state } = beginRun(started.job, run);
  return { state, at: 'begin/open', line: '', entries: [] };
}

const cut = ['spindle running', 'tool clear', 'spindle stopped'];
const closed = ['guard closed', 'hands clear'];
const newSpeed = ['speed set', ...closed];

const toBlade = [
  ...['next', 'glasses on', 'nothing loose', 'stop released', 'spindle stopped'],
  ...['tool locked', 'tailstock back', 'work clamped', 'key out', '22', 'correct', 'turns free'],
  // Face, touch, two passes, chamfer.
  ...[...throughGate, ...cut, ...cut],
  ...['next', ...cut, '20.5', 'correct', ...closed, 'next', ...cut, '20', 'correct'],
  ...[...closed, ...cut],
  // Centre drill and drill.
  ...['tailstock locked', ...newSpeed, ...cut, 'tailstock locked', ...newSpeed],
];
const drilling = hears(begun(), ...toBlade, 'spindle running');
const atPartGate = hears(
  drilling,
  ...['tool clear', 'spindle stopped', 'tool locked', 'tailstock back', 'turns free'],
);
const parting = hears(atPartGate, 'tool clear', ...newSpeed, 'spindle running');
const parted = hears(parting, 'tool clear', 'spindle stopped');
const walk = (turn: Turn) => positionOf(turn.state.snapshot).walk;

describe('a latch washer', () => {
  it('is made by saying what is done, and is judged by its thickness', () => {
    expect(drilling.at).toBe('drill/cutting');
    expect(parting.at).toBe('part-off/cutting');
    expect(parting.line).toContain('until the washer falls');
    expect(parted.at).toBe('inspect-thickness/open');
    const measured = hears(parted, '4.02', 'correct');
    expect(measured.at).toBe('record/open');
    expect(hears(measured, 'next').at).toBe('end/end');
  });

  it('is rubbed down while it is too thick, and is lost when it is too thin', () => {
    const thick = hears(parted, '4.15', 'correct');
    expect(thick.at).toBe('too-thick/open');
    expect(thick.line).toContain('zero point zero five millimetres too thick');
    const rubbing = hears(thick, 'rub it down');
    expect(rubbing.at).toBe('rub-down/open');
    expect(hears(rubbing, 'next', '4.1', 'correct').at).toBe('record/open');
    expect(hears(parted, '3.85', 'correct').at).toBe('scrap/open');
  });

  it('is kept for facing, and not rubbed at, where far more than emery takes off is left', () => {
    const far = hears(parted, '6', 'keep');
    expect([far.at, far.line]).toEqual([
      'too-thick/open',
      expect.stringContaining('one point nine millimetres too thick'),
    ]);
    const aside = hears(far, 'set aside');
    expect(aside.at).toBe('keep-thick/open');
    expect(hears(aside, 'next').at).toBe('end/end');
  });

  it('tells once that its bar is too thin', () => {
    const texts = {
      flow: textOf('latch-washer.json'),
      kind: textOf('kinds/lathe.json'),
      card: textOf('machines/metric-lathe.json'),
    };
    const started = startJob(texts, { barDiameter: 16, rimDiameter: 20 });
    expect(started.ok ? [] : started.faults).toEqual([
      'Bar out of the chuck: Bar of 16 mm cannot be turned to 20 mm; take thicker bar.',
    ]);
  });

  it('asks with the blade beside the jaws for a turn by hand, and for the blade to be clear', () => {
    expect([atPartGate.at, atPartGate.line]).toEqual(['place-blade/open', 'Say tool clear.']);
    const placed = hears(
      drilling,
      'tool clear',
      'spindle stopped',
      'tool locked',
      'tailstock back',
    );
    expect([placed.at, hears(placed, 'next').at]).toEqual(['place-blade/open', 'place-blade/open']);
    expect(hears(placed, 'it catches').at).not.toBe('part-off/gate');
  });

  it('is not caught by hand: "why" tells the learner what can hurt', () => {
    expect(hears(parting, 'why').line).toContain('Never catch the washer by hand: let it fall.');
  });
});

describe('trouble where the washer is made', () => {
  it('is told at each of its cuts by the words that count there', () => {
    expect(hears(drilling, 'trouble').line).toBe('Say will not start or drill squeals.');
    expect(hears(parting, 'trouble').line).toBe(
      'Say will not start, it chatters or parting tool grabs.',
    );
  });

  it('of a parting tool that grabs is answered as the caution of the cut has it: nothing is wound while it turns', () => {
    const { line } = hears(parting, 'parting tool grabs');
    expect(line).toContain('Hands away, and stop the spindle.');
    expect(line).not.toMatch(/wind/i);
    expect(hears(parting, 'why').line).toContain('Never wind it back while it turns.');
  });

  it('of a parting tool that grabs goes through all its causes and back, slower where that was one', () => {
    const partSpeed = ({ state }: Turn) => state.job.numbers.number({ working: 'partSpeed' }, {});
    // The card of the example has 300 and, below it, 190 rev/min (flows/machines/metric-lathe.json).
    expect(partSpeed(parting)).toBe(300);
    const stopped = hears(parting, 'parting tool grabs', 'spindle stopped');
    expect(walk(stopped)).toEqual({ id: 'parting-grabs', item: 'height' });
    expect(walk(hears(stopped, 'next'))?.item).toBe('height');
    const slower = hears(stopped, 'tool locked', 'next', 'tool locked', 'next', 'next');
    expect(walk(slower)?.item).toBe('slower');
    const back = hears(slower, 'lower speed', 'next', 'next');
    expect([back.at, partSpeed(back)]).toEqual(['part-off/gate', 190]);
    expect(hears(back, 'tool clear', ...newSpeed).at).toBe('part-off/start');
  });

  it('of a drill asks for sharp lips and for the tailstock again, and goes on with the hole', () => {
    const swarf = hears(drilling, 'drill squeals', 'spindle stopped');
    expect(walk(swarf)).toEqual({ id: 'drill-wanders', item: 'swarf' });
    const lips = hears(swarf, 'next');
    expect(walk(hears(lips, 'next'))?.item).toBe('lips');
    const back = hears(lips, 'tailstock locked', 'next', 'next', 'next');
    expect(back.at).toBe('drill/gate');
  });
});

describe('a batch of latch washers', () => {
  const { job } = parted.state;
  const kept = { unit: 'mm', at: 1 };
  const rim = { ...kept, step: 'turn-rim', reading: 'rimNow', label: 'Rim diameter' };
  const thick = { ...kept, step: 'inspect-thickness', reading: 'thick', label: 'Thickness' };
  const pieces = [0, 0.01, 0.02, 0.03].map((more): readonly KeptReading[] => [
    { ...rim, value: 20 + more, lower: 19.8, upper: 20.2 },
    { ...thick, value: 4 + more, lower: 3.9, upper: 4.1 },
  ]);
  const sizes = characteristics(job, pieces);

  // The mean of the four is 0.015 over the middle; half a division of the dial is 0.01, a half goes to the even one.
  it('is charted by rim and thickness, and only the rim is put right on the cross dial', () => {
    expect(sizes.map(({ label }) => label)).toEqual(['Rim diameter', 'Thickness']);
    expect(sizes.map((size) => driftTold(job, size)?.line)).toEqual([
      'The last four are each larger: take twenty microns off. Set the dial twenty microns further.',
      'The last four are each larger: make it twenty microns smaller.',
    ]);
  });
});
