/** The leaf bolt by words: ground once whole, bars that are too long or too short, and a wheel that shakes. */

import { describe, expect, it } from 'vitest';
import { beginRun, startJob } from '../../src/bench/index.ts';
import type { JobInputs } from '../../src/flow/index.ts';
import { textOf } from '../flow/shipped.ts';
import { head, hears, type Turn } from './scripted.ts';

function started(inputs: JobInputs = {}) {
  const [flow, kind] = [textOf('leaf-bolt.json'), textOf('kinds/grinder.json')];
  return startJob({ flow, kind, card: textOf('machines/metric-grinder.json') }, inputs);
}

function begun(): Turn {
  const made = started();
  if (!made.ok) throw new Error(made.faults.join('\n'));
  const { state } = beginRun(made.job, { ...head, flowId: 'leaf-bolt', flowTitle: 'Leaf bolt' });
  return { state, at: 'begin/open', line: '', entries: [] };
}

function refusal(inputs: JobInputs): string {
  const made = started(inputs);
  return made.ok ? 'begun' : made.faults.join(' ');
}

const toWheels = [
  ...['next', 'glasses on', 'nothing loose', 'stop released', 'wheels stopped', 'power isolated'],
];
const toBar = [
  ...['wheel sound', 'wheels signed off', 'covers tight', 'rest close', 'tongue guard set'],
  ...['2', 'correct'],
];
const toStart = [
  ...['work is steel', 'work clear', 'rim only', 'mark high enough', 'shield down'],
  ...['standing aside', 'hands clear'],
];

const measuring = hears(begun(), ...toWheels, ...toBar);
const gate = hears(measuring, '252.3', 'correct', 'next', 'next', 'main switch on');
const grinding = hears(gate, ...toStart, 'minute is up');

describe('a leaf bolt', () => {
  it('is ground by saying what is done, and is judged by its length', () => {
    expect([measuring.at, gate.at, grinding.at]).toEqual([
      'measure-bar/open',
      'grind-end/gate',
      'grind-end/cutting',
    ]);
    const ground = hears(grinding, 'work clear', 'wheels stopped');
    expect(hears(ground, '250.2', 'correct').at).toBe('bevel/gate');
    expect(hears(ground, '252', 'correct').at).toBe('grind-more/gate');
    expect(hears(ground, '248', 'correct').at).toBe('scrap/gate');
  });

  // From memory: ANSI B7.1: a minute at operating speed before grinding, with nobody in front. No clock holds it: the words do.
  it('[GRIND-RUN-UP] is asked to run a whole minute, and only those words lead to grinding', () => {
    const starting = hears(gate, ...toStart);
    expect(starting.line).toContain('one whole minute by the clock. Then say minute is up.');
    expect(hears(starting, 'next').at).toBe('grind-end/start');
    expect(hears(starting, 'work clear').at).toBe('grind-end/start');
  });

  it('sends a bar that is too long to the saw, and measures it again', () => {
    const long = hears(measuring, '310', 'correct', 'keep');
    expect([long.at, long.line]).toEqual([
      'bar-too-long/open',
      expect.stringContaining('It is longer than two hundred and fifty-five millimetres'),
    ]);
    expect(hears(long, 'next').at).toBe('measure-bar/open');
  });

  it('takes another bar for one that is too short, or ends where there is none', () => {
    const short = hears(measuring, '249', 'correct', 'keep');
    expect(short.at).toBe('bar-too-short/open');
    expect(hears(short, 'another bar').at).toBe('measure-bar/open');
    expect(hears(short, 'no bar left').at).toBe('no-bar/open');
    expect(hears(short, 'no bar left', 'next').at).toBe('end/end');
  });

  // Reckoned by hand: 250 and 5 to grind off are 255.
  it('is not begun with a bar that is too long to grind, or shorter than the bolt', () => {
    expect(refusal({ sawnLength: 255 })).toBe('begun');
    expect(refusal({ sawnLength: 256 })).toContain('Saw it to 255 mm or less first');
    expect(refusal({ sawnLength: 249 })).toContain('Take a longer bar');
  });

  it('[GRIND-SIGNED] is not ground on once a wheel shook until it is signed off, also where the walk is left at once', () => {
    const left = hears(grinding, 'wheel shakes', 'wheels stopped', 'carry on');
    const asked = hears(left, 'work clear', 'rim only', 'shield down', 'standing aside');
    const last = hears(asked, 'hands clear');
    expect(last.at).toBe('grind-end/gate');
    expect(last.line).toContain('sign both off');
    expect(hears(last, 'wheels signed off').line).toContain('main switch');
    expect(hears(last, 'wheels signed off', 'main switch on').at).toBe('grind-end/start');
  });
});
