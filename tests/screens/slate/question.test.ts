import { describe, expect, it } from 'vitest';
import {
  askSlate,
  firstTexts,
  rangeOfInput,
  wordsOf,
} from '../../../src/screens/slate/question.ts';
import { german } from '../../../src/texts/de/index.ts';
import { englishLanguage } from '../../../src/texts/index.ts';
import { findRule, type Rule, rules } from '../../../src/trade/index.ts';

function ruleNamed(name: string): Rule {
  const rule = findRule(name);
  if (!rule) throw new Error(`No rule is called ${name}.`);
  return rule;
}
const speed = ruleNamed('spindle-speed');
const field = (text: string, unit = '') => ({ text, unit });

describe('a question on the Slate', () => {
  // n = 1000 v ÷ (π d), by definition of the speed of a rim; worked by hand.
  it('is answered as soon as all is given, in the units that were typed', () => {
    const texts = { surfaceSpeed: field('28', 'm/min'), diameter: field('25', 'mm') };
    const answered = askSlate(speed, texts, englishLanguage);
    expect(answered.kind === 'answer' && answered.answer.value).toBeCloseTo(356.507, 3);
    const inInches = askSlate(speed, { ...texts, diameter: field('1 in', 'mm') }, englishLanguage);
    expect(inInches.kind === 'answer' && inInches.answer.value).toBeCloseTo(350.893, 3);
  });

  it('takes the decimal comma of its language', () => {
    const texts = { surfaceSpeed: field('28,5', 'm/min'), diameter: field('25', 'mm') };
    const answered = askSlate(speed, texts, german);
    expect(answered.kind === 'answer' && answered.answer.value).toBeCloseTo(362.873, 3);
  });

  it('tells what is still to give', () => {
    const open = askSlate(speed, { surfaceSpeed: field('28', 'm/min') }, englishLanguage);
    expect(open).toEqual({ kind: 'open', missing: ['diameter'] });
  });

  it('names the field that cannot be read, or the rule that refuses', () => {
    const texts = { surfaceSpeed: field('fast', 'm/min'), diameter: field('25', 'mm') };
    const unread = askSlate(speed, texts, englishLanguage);
    expect(unread.kind === 'faults' && Object.keys(unread.faults)).toEqual(['surfaceSpeed']);
    const refused = askSlate(
      speed,
      {
        surfaceSpeed: field('28', 'm/min'),
        diameter: field('-5', 'mm'),
      },
      englishLanguage,
    );
    expect(refused.kind).toBe('faults');
  });

  it.each(rules.map((rule) => [rule.name, rule] as const))(
    'to %s begins with what the rule itself proposes, and no field of it is wrong',
    (_, rule) => {
      const texts = firstTexts(rule, {}, englishLanguage);
      expect(Object.keys(texts)).toEqual(rule.inputs.map((input) => input.name));
      const result = askSlate(rule, texts, englishLanguage);
      // A rule that can be asked in several ways may refuse them all together, under no field's name.
      const faults = result.kind === 'faults' ? Object.keys(result.faults) : [];
      expect(faults.filter((name) => name !== '')).toEqual([]);
    },
  );

  it('takes what the machine card knows', () => {
    const texts = firstTexts(
      ruleNamed('card-speed'),
      { speeds: [70, 115, 190], chuckLimit: 1600 },
      englishLanguage,
    );
    expect(texts.speeds?.text).toBe('70, 115, 190');
    expect(texts.chuckLimit?.text).toBe('1600');
  });
});

describe('names and ranges', () => {
  it('are written as words, in the chosen unit', () => {
    expect(wordsOf('surfaceSpeed')).toBe('Surface speed');
    const diameter = speed.inputs.find((input) => input.name === 'diameter');
    expect(diameter && rangeOfInput(diameter, 'mm', englishLanguage)).toMatch(
      /^above 0 to \d+ mm$/,
    );
  });
});
