/** The hinge pin blank by words: sawn once whole, what goes wrong at the saw, and speeds that are told in metres a minute. */

import { describe, expect, it } from 'vitest';
import { beginRun, saidNow, slateAnswer, startJob } from '../../src/bench/index.ts';
import {
  figuresNow,
  type JobInputs,
  positionOf,
  readCard,
  translateFile,
} from '../../src/flow/index.ts';
import { german } from '../../src/texts/de/index.ts';
import { textOf } from '../flow/shipped.ts';
import { head, hears, type Turn } from './scripted.ts';

const shippedCard = textOf('machines/metric-band-saw.json');
const inchCard = JSON.stringify({
  ...(JSON.parse(shippedCard) as object),
  ...{ id: 'inch-band-saw', units: 'inch', speeds: ['80 ft/min', '150 ft/min', '295 ft/min'] },
});

const germanOf = (path: string) => `texts/de/${path.split('/').at(-1)}.json`;

function started(inputs: JobInputs = {}, card = shippedCard) {
  const [flow, kind] = [textOf('hinge-pin-blank.json'), textOf('kinds/band-saw.json')];
  return startJob({ flow, kind, card }, inputs);
}

function begun(inputs?: JobInputs, card?: string): Turn {
  const made = started(inputs, card);
  if (!made.ok) throw new Error(made.faults.join('\n'));
  const run = { ...head, flowId: 'hinge-pin-blank', flowTitle: 'Hinge pin blank' };
  const { state } = beginRun(made.job, run);
  return { state, at: 'begin/open', line: '', entries: [] };
}

function refusal(inputs: JobInputs, card?: string): string {
  const made = started(inputs, card);
  return made.ok ? 'begun' : made.faults.join(' ');
}

const toBlade = [
  ...['next', 'glasses on', 'nothing loose', 'stop released', 'blade stopped', 'power isolated'],
  ...['blade signed off', 'covers shut'],
];
const toGate = [
  ...['blade good', 'next', 'teeth clear', 'next', 'bar supported', 'next', 'next', 'work clamped'],
  ...['gauge away', 'guides near', 'main switch on'],
];
const throughGate = ['speed set', 'bare hands', 'covers shut', 'hands clear'];

const looking = hears(begun(), ...toBlade);
const gate = hears(looking, ...toGate);
const sawing = hears(gate, ...throughGate, 'blade running');
const sawn = hears(sawing, 'teeth clear', 'blade stopped', 'power isolated');
const measuring = hears(sawn, 'next', 'teeth clear', 'next', 'next', 'next');

const worked = ({ state }: Turn, working: string, part?: string) =>
  state.job.numbers.number(part === undefined ? { working } : { working, part }, {}) ?? 0;

describe('a hinge pin blank', () => {
  it('is sawn by saying what is done, and is judged by its length', () => {
    expect([gate.at, gate.line]).toEqual([
      'saw/gate',
      'Saw the blank. Set the blade speed to ninety metres a minute. Say speed set.',
    ]);
    expect([sawing.at, sawn.at, measuring.at]).toEqual([
      'saw/cutting',
      'head-off/open',
      'inspect-length/open',
    ]);
    const good = hears(measuring, '73.2', 'correct');
    expect(good.at).toBe('record/open');
    expect(hears(good, 'next').at).toBe('end/end');
  });

  it('is marked for the lathe while it is too long, and is lost when it is too short', () => {
    expect(hears(measuring, '74.1', 'correct').at).toBe('too-long/open');
    expect(hears(measuring, '72', 'correct').at).toBe('scrap/open');
  });

  it('leaves the saw to a trained person where the blade is worn', () => {
    const worn = hears(looking, 'blade worn');
    expect([worn.at, worn.line]).toEqual([
      'leave-saw/open',
      'Leave the saw off, and tell a trained person about the blade. Say next.',
    ]);
    expect(hears(worn, 'next').at).toBe('end/end');
  });

  it.each(['guides far', 'bar hanging', 'gauge in place', 'wearing gloves', 'covers open'])(
    'does not start, and holds where it runs, when somebody says "%s"',
    (loss) => {
      expect(hears(gate, ...throughGate, loss, 'blade running').at).toBe('saw/hold');
      expect(hears(sawing, loss).at).toBe('saw/hold');
    },
  );

  it('[SAW-SIGNED] is not sawn on once teeth strip until the blade is signed off, also where the walk is left at once', () => {
    const left = hears(sawing, 'teeth strip', 'blade stopped', 'carry on');
    const asked = hears(left, 'teeth clear', 'bare hands', 'covers shut', 'hands clear');
    expect(asked.at).toBe('saw/gate');
    expect(asked.line).toContain('Did a trained person fit or sign off this blade');
    expect(hears(asked, 'blade running').at).toBe('saw/hold');
    expect(hears(asked, 'blade signed off', 'main switch on').at).toBe('saw/start');
  });

  it('[SAW-ISOLATED] is not fetched while the blade runs on, nor while the main switch is on', () => {
    expect(hears(sawing, 'teeth clear', 'next').at).toBe('saw/stopping');
    expect(hears(sawing, 'teeth clear', 'blade stopped', 'next').at).toBe('power-off/open');
  });

  it('is asked about its head, its guides and how it lies when the cut runs out of square', () => {
    const walk = hears(sawing, 'out of square', 'blade stopped');
    expect(positionOf(walk.state.snapshot).walk).toEqual({ id: 'out-of-square', item: 'isolate' });
    const guides = hears(walk, 'power isolated', 'next', 'teeth clear', 'next');
    expect(guides.line).toContain('Bring both guide arms close to the bar');
    expect(hears(guides, 'guides near', 'next').line).toContain('flat and square');
  });
});

describe('the numbers of a blank', () => {
  // Machinery's Handbook 31 p. 1245: 1018 at 300 ft/min, 304 at 120; 1 in stock between 1.12 and 1.10; dry × 0.6.
  it('has the blade no faster than the published speed of its steel', () => {
    expect(worked(begun(), 'bladeMost') / 0.3048).toBeCloseTo(300 * 1.11, 0);
    expect(worked(begun(), 'bladeSpeed')).toBe(90);
    const dry = begun({ material: '304', coolant: 'no' });
    expect(worked(dry, 'bladeMost') / 0.3048).toBeCloseTo(120 * 1.11 * 0.6, 0);
    expect(worked(dry, 'bladeSpeed')).toBe(20);
  });

  // ISO 2768-1:1989, table 1, class c: over 30 up to 120 mm, 0.8.
  it('leaves metal to face, and judges the length by ISO 2768 c', () => {
    expect(worked(begun(), 'blank')).toBeCloseTo(73, 9);
    expect(worked(begun(), 'long', 'lower')).toBeCloseTo(72.2, 9);
    expect(worked(begun(), 'long', 'upper')).toBeCloseTo(73.8, 9);
    expect(worked(begun(), 'long', 'lower')).toBeGreaterThan(70);
  });

  // Agricultural Mechanics and Technology Systems (2017) p. 202: at least three teeth in the cut.
  it('is not begun with fewer than three teeth in the cut', () => {
    expect(refusal({ barDiameter: 18, bladeTeeth: 4 })).toContain('only 2.83 teeth in the cut');
    expect(refusal({ barDiameter: 18, bladeTeeth: 5 })).toBe('begun');
  });
});

describe('a speed of a saw band', () => {
  it('is heard, told and refused in metres a minute', () => {
    expect(saidNow(gate.state).running).toBe('m/min');
    const slower = hears(gate, 'I am running sixty five');
    expect(slower.line).toContain('Sixty-five metres a minute, as you run it.');
    expect(worked(slower, 'bladeSpeed')).toBe(65);
    const fast = hears(gate, 'I am running one hundred');
    expect(fast.line).toContain('ninety metres a minute');
    expect(worked(fast, 'bladeSpeed')).toBe(90);
  });

  it('is heard and told in feet a minute on an inch card', () => {
    const inch = hears(begun({}, inchCard), ...toBlade, ...toGate);
    expect(inch.line).toContain('Set the blade speed to two hundred and ninety-five feet a minute');
    expect(worked(inch, 'bladeSpeed')).toBeCloseTo(295 * 0.3048, 9);
    const slower = hears(inch, 'running one hundred and fifty');
    expect(worked(slower, 'bladeSpeed')).toBeCloseTo(150 * 0.3048, 9);
  });

  it('is offered one step lower where teeth strip', () => {
    const raised = ['power isolated', 'next', 'teeth clear', 'next'];
    const walk = hears(sawing, 'teeth strip', 'blade stopped', ...raised, 'blade signed off');
    const clamped = ['work clamped', 'bar supported'];
    const held = hears(walk, 'next', 'next', 'next', ...clamped, 'next');
    expect(held.line).toContain('One step lower is sixty-five metres a minute');
    expect(worked(hears(held, 'lower speed'), 'bladeSpeed')).toBe(65);
  });

  it('is a speed in German, where a spindle has its turns', () => {
    const translated = (path: string) => {
      const made = translateFile(path, textOf(`${path}.json`), textOf(germanOf(path)));
      if (!made.ok) throw new Error(made.faults.map(({ message }) => message).join(' '));
      return made.text;
    };
    const [flow, kind] = [translated('hinge-pin-blank'), translated('kinds/band-saw')];
    const made = startJob({ flow, kind, card: shippedCard }, {}, german);
    if (!made.ok) throw new Error(made.faults.join(' '));
    const { state } = beginRun(made.job, head);
    const words = ['weiter', 'brille auf', 'nichts lose', 'not halt frei', 'band steht'];
    const toBar = ['hauptschalter aus', 'band freigegeben', 'deckel zu', 'band gut', 'weiter'];
    const toVice = ['zähne frei', 'weiter', 'stange abgestützt', 'weiter', 'weiter'];
    const toSaw = ['werkstück gespannt', 'anschlag weg', 'führungen dicht', 'hauptschalter ein'];
    const start: Turn = { state, at: 'begin/open', line: '', entries: [] };
    const there = hears(start, ...words, ...toBar, ...toVice, ...toSaw);
    expect(there.line).toContain('neunzig Meter in der Minute');
    const speed = figuresNow(there.state.job, there.state.snapshot).find(
      ({ id }) => id === 'speed',
    );
    expect(speed?.label).toBe('Geschwindigkeit');
  });

  it('is none where a card gives turns, nor in a question about a spindle', () => {
    const turns = JSON.stringify({
      ...(JSON.parse(shippedCard) as object),
      speeds: ['450 rpm', '900 rpm'],
    });
    expect(refusal({}, turns)).toContain('on this kind of machine they are in m/min');
    const card = readCard('saw', shippedCard);
    if (!card.ok) throw new Error('the shipped card is not read');
    const asked = 'speed for thirty millimetres brass high speed steel';
    expect(slateAnswer(asked, card.value)).toEqual(
      slateAnswer(asked, { units: 'metric', values: {} }),
    );
  });
});
