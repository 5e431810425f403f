/** Questions to the Slate in German words, and their answers in German. */

import { describe, expect, test } from 'vitest';
import { slateAnswer, slateQuestion } from '../../src/bench/index.ts';
import { readCard } from '../../src/flow/index.ts';
import { german } from '../../src/texts/de/index.ts';
import { asksTexts, sayIn } from '../../src/texts/index.ts';
import { textOf } from '../flow/shipped.ts';

const read = readCard('card', textOf('machines/metric-lathe.json'));
const card = read.ok ? read.value : undefined;

function asked(text: string) {
  const question = slateQuestion(text, undefined, german);
  return question.ok ? { rule: question.rule.name, ...question.values } : question.fault;
}

describe('a question in German words', () => {
  test.each([
    [
      'Drehzahl für dreißig Millimeter Messing, Hartmetall',
      'speed-for-material',
      { diameter: 30, material: 'free-cutting-brass', tool: 'carbide' },
    ],
    [
      'Was ist die Drehzahl für 25 mm Baustahl?',
      'speed-for-material',
      { diameter: 25, material: 'low-carbon-steel' },
    ],
    [
      'Bohrdrehzahl für acht Millimeter Aluminium',
      'drill-speed',
      { diameter: 8, material: 'aluminium-6061' },
    ],
    [
      'Bohrvorschub für 8,5 mm Messing',
      'drill-feed',
      { diameter: 8.5, material: 'free-cutting-brass' },
    ],
    ['Kernloch für M zehn', 'tap-drill', { thread: 'M10' }],
    ['Kernloch für M zehn mal eins Komma zwei fünf', 'tap-drill', { thread: 'M10x1.25' }],
    ['Kernloch für M8 bei fünfundsechzig Prozent', 'tap-drill', { thread: 'M8', percent: 65 }],
    ['Grenzmaße für fünfundzwanzig h sieben Bohrung', 'limits-of-size', { size: 25, class: 'H7' }],
    ['Passung 25 H7', 'limits-of-size', { size: 25, class: 'H7' }],
    [
      'Kegel von dreißig auf fünfundzwanzig über fünfzig',
      'compound-angle',
      { large: 30, small: 25, length: 50 },
    ],
    ['Kegel von eins zu zwanzig', 'taper-angle', { oneIn: 20 }],
    ['Morsekegel drei', 'morse-taper', { number: '3' }],
    [
      'Vorschub für Rauheit eins Komma sechs mit einem Spitzenradius von null Komma vier',
      'feed-for-roughness',
      { roughness: 1.6, noseRadius: 0.4 },
    ],
    ['Drähte für M zehn', 'best-wire', { thread: 'M10' }],
    [
      'Schnitte von sechzig auf zweiundvierzig in Schnitten von zwei',
      'pass-plan',
      { stockDiameter: 60, finishDiameter: 42, deepestCut: 2 },
    ],
    ['Skale für null Komma fünf', 'dial-setting', { change: 0.5 }],
    ['dreißig Messing', 'speed-for-material', { diameter: 30, material: 'free-cutting-brass' }],
  ] as const)('"%s" asks %s', (text, rule, values) => {
    expect(asked(text)).toEqual({ rule, ...values });
  });

  test.each([
    ['Drehzahl für Messing', /^Sag einen Durchmesser und einen Werkstoff/],
    ['Drehzahl für dreißig', /^Sag auch den Werkstoff/],
    ['Grenzmaße für fünfundzwanzig h sieben', 'Sag Bohrung oder Welle nach der Klasse.'],
    ['das Wetter', /^Sag, was zu rechnen ist/],
    ['speed for thirty millimetres brass', /^Sag, was zu rechnen ist/],
  ])('"%s" is refused with what to say', (text, sentence) => {
    expect(asked(text)).toMatch(sentence);
  });

  test.each(['speedExample', 'drillSpeedExample', 'drillFeedExample'] as const)(
    'is understood where a refusal gives one as an example: %s',
    (key) => {
      expect(asked(sayIn(german, asksTexts)(key))).toMatchObject({ rule: expect.any(String) });
    },
  );
});

describe('the answer in German', () => {
  const told = (text: string) => {
    const answer = slateAnswer(text, card, german);
    return answer.ok ? answer.reply : { spoken: answer.fault, shown: '' };
  };

  // The sizes are those of the English tests, with their sources there: ISO 724 and ISO 286-2.
  test('says and shows figures as German does', () => {
    expect(told('Kernloch für M zehn')).toMatchObject({
      shown: '8,5\u00a0mm',
      spoken: 'Acht Komma fünf Millimeter.',
    });
    expect(told('Passung 25 H7').shown).toBe('25\u00a0mm bis 25,021\u00a0mm');
  });

  test('names the limit that rules', () => {
    expect(told('Bohrdrehzahl für acht Millimeter Aluminium').spoken).toMatch(/ Es gilt: .+\.$/);
  });
});
