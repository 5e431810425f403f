/** The trade's rules in German: every sentence has its German, and an answer has no English left in it. */

import { describe, expect, it } from 'vitest';
import { german } from '../../src/texts/de/index.ts';
import { answerRule, findRule, type RuleValues, rules, rulesIn } from '../../src/trade/index.ts';
import { sourcesIn } from '../house/sources.ts';
import { templatesIn, wholeTextsIn } from './worded-in.ts';

const sentences = german.sentences ?? {};

const sources = Object.entries(sourcesIn('src')).filter(([path]) => path.startsWith('trade/'));
const templates = sources.flatMap(([, source]) => templatesIn(source));

/** What a formula or a unit writes in every language. */
const signs = /\b(?:mm|min|kW|Nm|sin|cos|tan|cot|kg|kc|ISO)\b/g;

/** Words, or a decimal point. */
function isTranslated(text: string): boolean {
  const own = text.replace(/\{\d+\}/g, ' ').replace(signs, ' ');
  return /[a-z]{2}/i.test(own) || /\d\.\d/.test(own);
}

function holesIn(text: string): readonly string[] {
  return [...text.matchAll(/\{\d+\}/g)].map(([hole]) => hole).sort();
}

describe('the sentences of trade rules', () => {
  it('are found: hundreds of workings and faults', () => {
    expect(templates.length).toBeGreaterThan(300);
    expect(templates).toContain('{0} mm/rev × {1} rev/min = {2} mm/min');
  });

  it('have German with the same values, each one that has words', () => {
    const wanted = templates.filter(isTranslated);
    expect(wanted.filter((key) => !Object.hasOwn(sentences, key))).toEqual([]);
    for (const key of wanted)
      expect([key, holesIn(sentences[key] ?? '')]).toEqual([key, holesIn(key)]);
  });

  it('have German where they are written whole', () => {
    const wanted = sources.flatMap(([, source]) => wholeTextsIn(source)).filter(isTranslated);
    expect(wanted.length).toBeGreaterThan(200);
    expect(wanted.filter((text) => !Object.hasOwn(sentences, text))).toEqual([]);
  });

  it('begin and end with a blank in both languages or in neither', () => {
    const edges = (text: string) => [text.startsWith(' '), text.endsWith(' ')];
    for (const [key, text] of Object.entries(sentences)) {
      expect([key, edges(text)]).toEqual([key, edges(key)]);
    }
  });

  it('have no German that nothing says', () => {
    const elsewhere = Object.entries(sourcesIn('src')).flatMap(([path, source]) =>
      /^(?:proof|flow)\//.test(path) ? templatesIn(source) : [],
    );
    const english = new Set([...templates, ...elsewhere, ...rules.flatMap(textsOf)]);
    const unknown = Object.keys(sentences).filter(
      (key) => /\{\d/.test(key) && !english.has(key) && key !== '{0} and {1}',
    );
    expect(unknown).toEqual([]);
  });
});

function textsOf(rule: (typeof rules)[number]): readonly string[] {
  const { title, topic, output, formula, source, cautions, inputs } = rule;
  const meanings = inputs.map(({ meaning }) => meaning);
  return [title, topic, output.meaning, formula, source, ...cautions, ...meanings];
}

describe('a rule in German', () => {
  it.each(rules)('$name has every text of its own in German', (rule) => {
    const missing = textsOf(rule).filter(
      (text) => isTranslated(text) && !Object.hasOwn(sentences, text),
    );
    expect(missing).toEqual([]);
  });

  it('has a German name for every input and every part', () => {
    const names = rules.flatMap(({ inputs, output }) => [
      ...inputs.map(({ name }) => name),
      ...Object.keys(output.parts ?? {}),
    ]);
    const wanted = [...new Set(names)].filter((name) => name.length > 2);
    expect(wanted.filter((name) => !Object.hasOwn(sentences, `name:${name}`))).toEqual([]);
  });

  it('keeps numbers, limits and choices as they are', () => {
    for (const [index, rule] of rulesIn(german).entries()) {
      const bare = ({ kind, name, ...rest }: (typeof rule.inputs)[number]) => ({
        kind,
        name,
        quantity: 'quantity' in rest ? rest.quantity : undefined,
        options: 'options' in rest ? rest.options : undefined,
      });
      expect(rule.inputs.map(bare)).toEqual(rules[index]?.inputs.map(bare));
    }
  });
});

/** Twenty questions from all over the shop. */
const asked: readonly (readonly [rule: string, values: RuleValues])[] = [
  ['speed-for-material', { material: 'free-cutting-brass', operation: 'turn', diameter: 30 }],
  ['card-speed', { diameter: 24, surfaceSpeed: 28, speeds: [70, 200, 450], chuckLimit: 300 }],
  ['running-speed', { spindleSpeed: 200, diameter: 24, surfaceSpeed: 28 }],
  ['turning-feed', { operation: 'rough', material: 'stainless-304' }],
  ['pass-plan', { stockDiameter: 30, finishDiameter: 24.5, deepestCut: 1.5 }],
  ['next-pass', nextPass()],
  ['facing-plan', { measured: 62.4, finishLength: 60, deepestCut: 1 }],
  ['judge-reading', { reading: 23.97, lower: 23.95, upper: 24, side: 'outside' }],
  ['limits-of-size', { size: 25, class: 'H7' }],
  ['fit', { size: 25, hole: 'H7', shaft: 'g6' }],
  ['general-tolerance', { size: 40, class: 'm' }],
  ['tap-drill', { thread: 'M10' }],
  ['thread-infeed', { thread: 'M10x1.5' }],
  ['taper-angle', { oneIn: 20 }],
  ['tailstock-offset', { large: 30, small: 28.5, taperLength: 50, workLength: 120 }],
  ['overhang', { length: 90, diameter: 20 }],
  ['drill-press-step', { surfaceSpeed: 22, drill: 8, steps: [400, 700, 1200] }],
  ['saw-pitch', { thickness: 20 }],
  ['drift', { readings: [24.1, 24.12, 24.14, 24.16], lower: 24, upper: 24.2, graduation: 0.02 }],
  ['square-up', squareUp()],
];

function nextPass(): RuleValues {
  const sizes = { measured: 30, finishDiameter: 24.5, deepestCut: 1.5, graduation: 0.05 };
  return { ...sizes, dialReads: 'diameter', direction: 'outside' };
}

function squareUp(): RuleValues {
  const rough = { roughLength: 62, roughWidth: 42, roughHeight: 32 };
  return { ...rough, finishLength: 60, finishWidth: 40, finishHeight: 30 };
}

const englishWords =
  /\b(?:the|of|is|are|and|for|not|with|to|than|take|give|speed|feed|cut|mean|work|depth|turns?|holes?|rules|limits?|tool|inside|outside|within|by|on|drill|thread|teeth|steps?|reading|next|lower|card|left|rising|larger|smaller)\b/i;

describe('an answer in German', () => {
  it.each(asked)('%s has no English word and no decimal point in it', (name, values) => {
    const rule = findRule(name, german);
    const answer = rule && answerRule(rule, values);
    if (!answer?.ok) throw new Error(answer?.fault ?? `no rule ${name}`);
    const meanings = Object.values(answer.parts ?? {}).map(({ meaning }) => meaning);
    const told = [answer.working, answer.ruledBy, answer.wordShown, ...meanings].join('\n');
    expect(told).not.toMatch(englishWords);
    expect(told).not.toMatch(/\d\.\d/);
  });

  it('has the same number and the same word as in English', () => {
    for (const [name, values] of asked) {
      const [here, there] = [findRule(name), findRule(name, german)];
      const [first, second] = [here, there].map((rule) => rule && answerRule(rule, values));
      if (!first?.ok || !second?.ok) throw new Error(`no answer to ${name}`);
      expect([name, second.value, second.word]).toEqual([name, first.value, first.word]);
    }
  });

  it('has figures by its own signs, and refuses in its own words', () => {
    const rule = findRule('card-steps', german);
    const answer = rule && answerRule(rule, { surfaceSpeed: 28.5, speeds: [70, 200] });
    expect(answer?.ok && answer.working).toBe(
      '1000 × 28,5 ÷ (π × n) für n = 70; 200: 129,6; 45,36 mm',
    );
    const refused = rule && answerRule(rule, { surfaceSpeed: 28.5, speeds: [0.5] });
    expect(refused?.ok === false && refused.fault).toBe(
      'Drehzahlen: 0,5 1/min geht nicht; möglich ist von 1 bis 60000 1/min.',
    );
  });
});
