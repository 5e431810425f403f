/** The latch keeper on an inch mill: made whole by words, with every size and number in inches. */

import { describe, expect, it } from 'vitest';
import { beginRun, startJob } from '../../src/bench/index.ts';
import { figuresNow } from '../../src/flow/index.ts';
import { textOf } from '../flow/shipped.ts';
import { head, hears, type Turn } from './scripted.ts';

const inch = 25.4;
/** Two and a quarter by one by three quarters, to five eighths high; a slot of three eighths by a quarter. */
const inputs = {
  ...{ blockLength: 2.25 * inch, blockWidth: inch, stockHeight: 0.75 * inch, height: 0.625 * inch },
  ...{ slotWidth: 0.375 * inch, slotDepth: 0.25 * inch, faceCutter: 1.25 * inch },
  ...{ feedPerTooth: 0.002 * inch, deepestFace: 0.05 * inch, deepestSlot: 0.1 * inch },
};

function begun(): Turn {
  const texts = {
    flow: textOf('latch-keeper.json'),
    kind: textOf('kinds/mill.json'),
    card: textOf('machines/inch-mill.json'),
  };
  const started = startJob(texts, inputs);
  if (!started.ok) throw new Error(started.faults.join('\n'));
  const { state } = beginRun(started.job, { ...head, flowId: 'latch-keeper' });
  return { state, at: 'begin/open', line: '', entries: [] };
}

const shown = ({ state }: Turn) =>
  figuresNow(state.job, state.snapshot).map(
    ({ label, text }) => `${label} ${text.replaceAll('\u00a0', ' ')}`,
  );

const closed = ['guard closed', 'hands clear'];
const throughGate = ['slides locked', 'conventional milling', 'speed set', ...closed];
const cut = ['spindle running', 'cutter clear', 'spindle stopped'];

const measured = hears(begun(), 'next', 'spindle stopped', '0.748', 'correct');
const atFace = hears(
  measured,
  ...['glasses on', 'nothing loose', 'stop released', 'spindle stopped', 'guard closed'],
  ...['work clamped', 'handle off', 'cutter tight', 'spanner away', 'cutter clear'],
);
const faced = hears(atFace, ...throughGate, ...cut);
const high = hears(faced, '0.64', 'correct');
const atSlot = hears(
  hears(high, ...throughGate, ...cut, '0.626', 'correct'),
  ...['cutter tight', 'spanner away', 'cutter clear'],
);
const slotted = hears(atSlot, ...throughGate, ...cut);

describe('a latch keeper on an inch mill', () => {
  it('is made by saying what is done, its sizes in inches', () => {
    expect([atFace.at, faced.at, high.at]).toEqual([
      'mill-face/gate',
      'inspect-height/open',
      'face-more/gate',
    ]);
    expect([atSlot.at, slotted.at]).toEqual(['mill-slot/gate', 'inspect-depth/open']);
    const good = hears(slotted, '0.251', 'correct');
    expect(good.at).toBe('take-out/open');
    const out = hears(good, 'work out', 'handle off');
    expect(hears(out, 'next').at).toBe('end/end');
  });

  // 12 V ÷ (π D) and feed = teeth × feed a tooth × turns, Machinery's Handbook. 25 m/min is 82 ft/min: 251 and 835
  // rev/min at most, 210 and 540 on the card. By hand: 210 × 4 × 0.002 = 1.68; 540 × 2 × 0.002 = 2.16.
  it('has its numbers in inches, worked out as inch shops do', () => {
    expect(shown(atFace)).toEqual(
      expect.arrayContaining(['Speed 210 rpm', 'Feed 1.68 in/min', 'Depth 0.041 in']),
    );
    expect(shown(atSlot)).toEqual(
      expect.arrayContaining(['Speed 540 rpm', 'Feed 2.16 in/min', 'Depth 0.083 in']),
    );
  });

  // ISO 2768-1:1989, table 1, class m: over 6 up to 30 mm, 0.2 mm, which is 0.0079 in.
  it('is judged by limits in inches', () => {
    expect(shown(faced)).toEqual(expect.arrayContaining(['Least 0.617 in', 'Most 0.633 in']));
    expect(hears(slotted, '0.262', 'correct').at).toBe('scrap-out/open');
  });
});
