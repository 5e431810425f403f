import { describe, expect, test } from 'vitest';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../../src/cli/flow-files.ts';
import { commandWords } from '../../src/flow/command-words.ts';
import {
  type Card,
  type Flow,
  type FlowSnapshot,
  figuresNow,
  planAt,
  positionOf,
  type SaidList,
  saidList,
  type View,
  viewOf,
} from '../../src/flow/index.ts';
import { englishLanguage } from '../../src/texts/index.ts';
import { walkRight } from './right-walk.ts';
import { jobOf } from './shipped.ts';

const kinds = shippedKinds();

function flowAt(path: string): Flow {
  const read = readFlowAt(path, kinds);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.flow;
}

/** Every shipped flow on every shipped machine of its kind. */
const onMachines = shippedFlows().flatMap((path) => {
  const flow = flowAt(path);
  const cards = shippedCards().filter((card) => card.machineKind === flow.kind.id);
  return cards.map((card) => ({ name: `${flow.file.id} on the ${card.id}`, flow, card }));
});

/** Every choice of a flow with every other: materials with tools. */
function choicesOf({ scope }: Flow): readonly Readonly<Record<string, string>>[] {
  return [...scope.inputs].reduce<readonly Readonly<Record<string, string>>[]>(
    (all, [id, input]) =>
      'options' in input
        ? all.flatMap((one) => input.options.map((option) => ({ ...one, [id]: option })))
        : all,
    [{}],
  );
}

const cases = onMachines.flatMap(({ name, flow, card }) =>
  choicesOf(flow).map((choices) => ({
    name: `${name}: ${Object.values(choices).join(', ')}`,
    ...{ flow, card, choices },
  })),
);
const stepsOf = (path: readonly FlowSnapshot[]) => new Set(path.map((at) => positionOf(at).step));

const unitOf = ({ units }: Card) => (units === 'inch' ? 'in' : 'mm');

describe('a person who does everything right', () => {
  test.each(cases)('makes the piece of $name', ({ flow, card, choices }) => {
    const job = jobOf(flow, choices, card);
    const path = walkRight(job);
    expect(stepsOf(path)).toContain('record');
    expect(positionOf(path.at(-1) as FlowSnapshot).phase).toBe('end');
    // A band has no chuck, and no card of such a saw a mark of one.
    const { chuckLimit = Number.POSITIVE_INFINITY } = job.card.values;
    for (const at of path) {
      const speed = at.context.speedSet ?? 0;
      expect(speed).toBeLessThanOrEqual(Number(chuckLimit));
      expect(speed).toBeLessThanOrEqual(Number(job.card.values.topSpeed));
    }
    expect(path.filter((at) => (at.context.speedSet ?? 0) > 0).length).toBeGreaterThan(10);
  });
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

describe.each(onMachines)('everything seen and said: $name', ({ flow, card }) => {
  const job = jobOf(flow, {}, card);
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
    const counts = new Set(['Pecks', 'Turns', 'Pieces', 'Teeth in the cut']);
    const strange = figures.filter(({ label, text }) =>
      counts.has(label) ? !/^[\d.,]+$/.test(text) : !/^-?[\d.,]+\u00A0\D+$/.test(text),
    );
    expect(strange.map(({ label, text }) => `${label}: ${text}`)).toEqual([]);
    expect(figures.length).toBeGreaterThan(path.length);
  });

  test('leaves no step without something to do or answer', () => {
    for (const view of views) expect(view.lead.spoken + view.ask.spoken).not.toBe('');
  });
});

describe.each(onMachines)('the said list along the whole job: $name', ({ flow, card }) => {
  const job = jobOf(flow, {}, card);
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
    const unit = unitOf(card);
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
