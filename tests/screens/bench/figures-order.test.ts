import { describe, expect, it } from 'vitest';
import { viewNow } from '../../../src/bench/index.ts';
import type { Figure } from '../../../src/flow/index.ts';
import {
  allFigures,
  inOrder,
  numberAndUnit,
  shortWorking,
} from '../../../src/screens/bench/figures-order.ts';
import { begun, hears, toBar } from '../../bench/scripted.ts';

const figure = (id: string): Figure => ({ id, label: id, text: '1', spoken: 'one' });
const all = ['dial', 'cut', 'left', 'size', 'speed', 'feed', 'length', 'lower', 'upper'].map(
  figure,
);
const ids = (figures: readonly Figure[]) => figures.map(({ id }) => id);

describe('the figures', () => {
  it.each([
    ['dial', ['dial', 'cut', 'left']],
    ['start', ['speed', 'dial']],
    ['stopping', ['speed']],
    ['cutting', ['dial', 'feed', 'length']],
    ['measure', ['lower', 'upper', 'left']],
    ['gate', ['speed', 'dial', 'feed']],
  ] as const)('that matter at "%s" are large', (phase, large) => {
    expect(ids(inOrder(all, phase).large)).toEqual(large);
  });

  it('are all there, each once', () => {
    const { large, small } = inOrder(all, 'dial');
    expect(ids([...large, ...small]).sort()).toEqual(ids(all).sort());
  });

  it('are shown once where the line tells a number that the step shows by itself', () => {
    const mounting = viewNow(hears(begun(), ...toBar, '25', 'correct').state);
    expect(mounting.step.title).toBe('Mount the blank');
    expect(allFigures(mounting).map(({ label, text }) => `${label} ${text}`)).toEqual([
      'Shank length 45.00\u00a0mm',
    ]);
  });
});

describe('a figure as text', () => {
  it.each([
    ['300\u00a0rpm', '300', 'rpm'],
    ['0.10\u00a0mm/rev', '0.10', 'mm/rev'],
    ['−0.02\u00a0mm', '−0.02', 'mm'],
    ['2,000\u00a0rpm', '2,000', 'rpm'],
    ['4', '4', ''],
    ['45°', '45', '°'],
    ['low carbon steel', 'low carbon steel', ''],
  ])('%s is parted into number and unit', (text, number, unit) => {
    expect(numberAndUnit(text)).toEqual({ number, unit });
  });
});

describe('a working in one line', () => {
  it('is the sum, and what the card makes of it', () => {
    const whole =
      '1000 × 28 m/min ÷ (π × 25 mm) = 356.5 rev/min; next lower on the card: 300 rev/min, 23.6 m/min (the surface speed rules)';
    expect(shortWorking(whole)).toBe(
      '1000 × 28 m/min ÷ (π × 25 mm) = 356.5 rev/min → next lower on the card: 300 rev/min',
    );
  });

  it('is the whole of a short one', () => {
    expect(shortWorking('73 − 70 = 3 mm')).toBe('73 − 70 = 3 mm');
  });
});
