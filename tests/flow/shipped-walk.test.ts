import { describe, expect, test } from 'vitest';
import { commandWords } from '../../src/flow/command-words.ts';
import {
  type FlowSnapshot,
  figuresNow,
  type Job,
  planAt,
  positionOf,
  type SaidList,
  saidList,
  type View,
  viewOf,
} from '../../src/flow/index.ts';
import { englishLanguage } from '../../src/texts/index.ts';
import { walkRight } from './right-walk.ts';
import { cardNamed, hingePin, jobOf } from './shipped.ts';

const flow = hingePin();
const cards = ['metric-lathe', 'inch-lathe'] as const;
const optionsOf = (id: string) => {
  const input = flow.scope.inputs.get(id);
  return input && 'options' in input ? input.options : [];
};
const cases = cards.flatMap((card) =>
  optionsOf('material').flatMap((material) =>
    optionsOf('tool').map((tool) => ({ card, material, tool })),
  ),
);
const jobs = new Map<string, Job>();
const stepsOf = (path: readonly FlowSnapshot[]) => new Set(path.map((at) => positionOf(at).step));

describe('a person who does everything right', () => {
  test.each(cases)(
    'makes the pin of $material with $tool on the $card',
    ({ card, material, tool }) => {
      const job = jobOf(flow, { material, tool }, cardNamed(card));
      jobs.set(`${card} ${material} ${tool}`, job);
      const path = walkRight(job);
      expect(stepsOf(path)).toContain('record');
      expect(positionOf(path.at(-1) as FlowSnapshot).phase).toBe('end');
      const mark = Number(job.card.values.chuckLimit);
      for (const at of path) {
        const speed = at.context.speedSet ?? 0;
        expect(speed).toBeLessThanOrEqual(mark);
        expect(speed).toBeLessThanOrEqual(Number(job.card.values.topSpeed));
      }
      expect(path.filter((at) => (at.context.speedSet ?? 0) > 0).length).toBeGreaterThan(10);
    },
  );
});

/** What goes wrong with one view: a brace left over, a line too long to follow by ear. */
const texts = (view: View) => [
  view.lead.shown,
  view.lead.spoken,
  view.ask.shown,
  view.ask.spoken,
  view.why ?? '',
  ...view.cautions,
  ...view.gate.flatMap(({ ask }) => (ask ? [ask.question, ask.remedy] : [])),
];
const words = (text: string) => text.split(/\s+/).filter((word) => word !== '').length;

describe.each(cards)('everything seen and said on the %s', (card) => {
  const job = jobOf(flow, {}, cardNamed(card));
  const path = walkRight(job);
  const views = path.map((at) => viewOf(job, at));

  test('has no braces left', () => {
    expect(views.flatMap(texts).filter((text) => /[{}]/.test(text))).toEqual([]);
  });

  test('is spoken in at most 25 words', () => {
    const lines = views.flatMap(({ lead, ask }) => [lead.spoken, ask.spoken]);
    expect(lines.filter((line) => words(line) > 25)).toEqual([]);
  });

  test('tells every figure with a number and a unit, or as a count', () => {
    const figures = path.flatMap((at) => figuresNow(job, at));
    const counts = new Set(['Pecks', 'Turns']);
    const strange = figures.filter(({ label, text }) =>
      counts.has(label) ? !/^[\d.,]+$/.test(text) : !/^-?[\d.,]+\u00A0\D+$/.test(text),
    );
    expect(strange.map(({ label, text }) => `${label}: ${text}`)).toEqual([]);
    expect(figures.length).toBeGreaterThan(50);
  });

  test('leaves no step without something to do or answer', () => {
    for (const view of views) expect(view.lead.spoken + view.ask.spoken).not.toBe('');
  });
});

describe.each(cards)('the said list along the whole job on the %s', (card) => {
  const job = jobOf(flow, {}, cardNamed(card));
  const path = walkRight(job);
  const lists = path.map((at) => saidList(job, at));
  const doubled = (all: readonly string[]) =>
    all.filter((one, index) => all.indexOf(one) !== index);

  test('has every id once, and no phrase that means two things', () => {
    for (const { items } of lists) {
      expect(doubled(items.map((item) => item.id))).toEqual([]);
      expect(doubled(items.flatMap((item) => [...new Set(item.phrases)]))).toEqual([]);
    }
  });

  test('keeps the words of its commands from every flow and machine', () => {
    const own = lists.flatMap(({ items }) =>
      items.filter(({ kind }) => kind === 'move' || kind === 'ask' || kind === 'drill'),
    );
    const phrases = new Set(own.flatMap((item) => item.phrases));
    expect([...phrases].filter((phrase) => !commandWords(englishLanguage).has(phrase))).toEqual([]);
    expect(phrases.size).toBeGreaterThan(15);
  });

  test('always takes repeat, hold and stop until the end', () => {
    const always = (list: SaidList) =>
      ['ask:repeat', 'hold', 'stop'].every((id) => list.items.some((item) => item.id === id));
    expect(lists.slice(0, -1).every(always)).toBe(true);
    expect(lists.at(-1)?.items.map((item) => item.id)).toEqual(['ask:repeat', 'ask:words']);
  });

  test('asks for a number exactly where a gauge is read, in the unit of the machine', () => {
    const unit = card === 'inch-lathe' ? 'in' : 'mm';
    path.forEach((at, index) => {
      const { number } = lists[index] ?? {};
      const { phase } = positionOf(at);
      const kind = planAt(job, at)?.step.kind;
      const gauge =
        phase === 'measure' || (phase === 'open' && (kind === 'measure' || kind === 'inspect'));
      expect(number !== undefined, `${positionOf(at).step}/${phase}`).toBe(gauge);
      if (!number) return;
      expect(number.unit).toBe(unit);
      expect(number.min).toBeLessThan(number.max);
      expect(number.expected ?? number.min).toBeGreaterThanOrEqual(number.min);
      expect(number.expected ?? number.max).toBeLessThanOrEqual(number.max);
    });
  });
});
