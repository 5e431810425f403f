import { describe, expect, test } from 'vitest';
import { slateAnswer, slatePhrases, slateQuestion } from '../../src/bench/index.ts';
import { readCard } from '../../src/flow/index.ts';
import { textOf } from '../flow/shipped.ts';
import { begun, hears, toBar, toFirstGate } from './scripted.ts';

function cardOf(name: string) {
  const read = readCard(name, textOf(`machines/${name}.json`));
  if (!read.ok) throw new Error(name);
  return read.value;
}
const card = cardOf('metric-lathe');

function asked(text: string, on?: typeof card) {
  const question = slateQuestion(text, on);
  return question.ok ? { rule: question.rule.name, ...question.values } : question.fault;
}

describe('a question in free words', () => {
  test.each([
    [
      'speed for thirty millimetres brass, high-speed steel',
      'speed-for-material',
      { diameter: 30, material: 'free-cutting-brass', tool: 'hss' },
    ],
    [
      'What is the speed for 25 mm mild steel, carbide, facing?',
      'speed-for-material',
      { diameter: 25, material: 'low-carbon-steel', tool: 'carbide', operation: 'face' },
    ],
    // 1.5 in × 25.4 = 38.1 mm.
    [
      'speed for one and a half inches stainless',
      'speed-for-material',
      { diameter: 38.1, material: 'stainless-304' },
    ],
    [
      'drill speed for eight millimetres aluminium',
      'drill-speed',
      { diameter: 8, material: 'aluminium-6061' },
    ],
    ['drilling feed for 8mm brass', 'drill-feed', { diameter: 8, material: 'free-cutting-brass' }],
    ['tapping drill for M ten', 'tap-drill', { thread: 'M10' }],
    ['tapping drill for m ten by one point two five', 'tap-drill', { thread: 'M10x1.25' }],
    ['tap drill for M8 at sixty five percent', 'tap-drill', { thread: 'M8', percent: 65 }],
    ['tapping drill for quarter twenty unc', 'tap-drill', { thread: '1/4-20 UNC' }],
    ['tapping drill for three eighths sixteen', 'tap-drill', { thread: '3/8-16' }],
    ['limits for twenty five h seven hole', 'limits-of-size', { size: 25, class: 'H7' }],
    ['limits for twenty-five g six shaft', 'limits-of-size', { size: 25, class: 'g6' }],
    ['limits for 25 H7', 'limits-of-size', { size: 25, class: 'H7' }],
    [
      'taper from thirty to twenty five over fifty',
      'compound-angle',
      { large: 30, small: 25, length: 50 },
    ],
    ['taper of one in twenty', 'taper-angle', { oneIn: 20 }],
    ['morse taper three', 'morse-taper', { number: '3' }],
    [
      'feed for roughness one point six with a nose of zero point four',
      'feed-for-roughness',
      { roughness: 1.6, noseRadius: 0.4 },
    ],
    ['wires for M ten', 'best-wire', { thread: 'M10' }],
    [
      'passes from sixty to forty-two in cuts of two',
      'pass-plan',
      { stockDiameter: 60, finishDiameter: 42, deepestCut: 2 },
    ],
  ] as const)('"%s" asks %s', (text, rule, values) => {
    expect(asked(text)).toEqual({ rule, ...values });
  });

  test('takes the dial, the speeds and the limits of the machine along', () => {
    expect(asked('dial for zero point five', card)).toMatchObject({
      change: 0.5,
      dialReads: 'diameter',
      graduation: 0.02,
    });
    expect(asked('dial for zero point five radius', card)).toMatchObject({ dialReads: 'radius' });
    expect(asked('speed for 30 brass', card)).toMatchObject({ chuckLimit: 1600, cardLimit: 2000 });
  });

  test('reads a bare number in the units of the machine', () => {
    expect(asked('drill feed for half brass', cardOf('inch-lathe'))).toMatchObject({
      diameter: 12.7,
    });
  });

  test.each([
    ['speed for brass', /^Say a diameter and a material/],
    ['speed for thirty', /^Say the material too/],
    // A class that is heard has no capitals, and H7 is not h7.
    ['limits for twenty five h seven', 'Say hole or shaft after the class.'],
    ['speed for thirty brass forty', /^Say a diameter/],
    ['speed for roughly thirty brass', /^Say a diameter/],
    ['tapping drill for the big one', /^Say a thread/],
    ['the weather', /^Say what to work out/],
    ['', /^Say what to work out/],
  ])('"%s" is refused with what to say', (text, sentence) => {
    expect(asked(text)).toMatch(sentence);
  });
});

describe('the answer', () => {
  const told = (text: string) => {
    const answer = slateAnswer(text, card);
    return answer.ok ? answer.reply.spoken : answer.fault;
  };

  test.each([
    // ISO 724, minor diameter and the metric hole chart: M10 is drilled 8.5.
    ['tapping drill for M ten', 'Eight point five millimetres.'],
    // Inch tap drill chart: 1/4-20 UNC is drilled number 7, 0.201 in.
    ['tapping drill for quarter twenty unc', 'Number 7, five point one zero five millimetres.'],
    // ISO 286-2: 25 H7 is 0 to +21 micrometres.
    [
      'limits for 25 H7',
      'From twenty-five millimetres to twenty-five point zero two one millimetres.',
    ],
    // Taper 1:10, half angle 2.862°: atan((30 − 25) ÷ 2 ÷ 50).
    ['taper from thirty to twenty five over fifty', 'Two point eight six two degrees.'],
    // 0.57735 × 1.5.
    ['best wire for M10', 'Zero point eight six six millimetres.'],
  ])('to "%s" is "%s"', (text, answer) => {
    expect(told(text)).toBe(answer);
  });

  test('names the limit that rules, and the source to "why that"', () => {
    const answer = slateAnswer('drill speed for eight millimetres aluminium', card);
    if (!answer.ok) throw new Error(answer.fault);
    expect(answer.reply.spoken).toMatch(/The chuck's mark rules\.$/);
    expect(answer.reply.why).toMatch(
      /from diameter eight millimetres and material aluminium 6061\. .* Source: /,
    );
    expect(answer.reply.working).not.toBe('');
    expect(answer.reply.source).not.toBe('');
  });
});

test('every phrase an ear is given for the Slate is answered', () => {
  const phrases = slatePhrases();
  expect(phrases.length).toBeGreaterThan(200);
  expect(phrases.filter((phrase) => !slateAnswer(phrase, card).ok)).toEqual([]);
});

describe('inside a run', () => {
  const gate = hears(begun(), ...toBar, ...toFirstGate);

  test('a question that begins with slate or work out is answered and moves nothing', () => {
    for (const begins of ['slate', 'Work out', 'slate,']) {
      const turn = hears(gate, `${begins} tapping drill for M ten`);
      expect(turn.line).toBe('Eight point five millimetres.');
      expect(turn.state.snapshot).toBe(gate.state.snapshot);
      expect(turn.entries.at(-1)).toMatchObject({ event: null, outcome: 'asked' });
    }
    expect(hears(gate, 'slate tapping drill for M ten', 'why that').line).toMatch(/Source: /);
  });

  test('the same words without that beginning are talk', () => {
    expect(hears(gate, 'the tapping drill for M ten is in the box').line).toBe('');
  });

  test('a number that waits for its answer still waits', () => {
    const turn = hears(begun(), ...toBar, '24.95', 'slate wires for M10', 'correct');
    expect(turn.state.snapshot.context.readings.barNow).toBe(24.95);
  });
});

describe('a material and a size without "speed"', () => {
  test.each([
    'brass thirty high-speed steel',
    'high speed steel brass thirty',
    'thirty millimetres brass',
    'thirty brass high-speed steel speed',
  ])('ask for the speed in any order: %s', (words) => {
    const asked = slateQuestion(words);
    expect(asked).toMatchObject({
      ok: true,
      rule: { name: 'speed-for-material' },
      values: { material: 'free-cutting-brass', diameter: 30 },
    });
  });

  test('one of them alone is not enough to know what is asked', () => {
    expect(slateQuestion('brass')).toMatchObject({ ok: false });
    expect(slateQuestion('thirty')).toMatchObject({ ok: false });
  });
});
