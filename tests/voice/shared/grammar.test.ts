import { describe, expect, it } from 'vitest';
import { loadDictionary } from '../../../src/cli/hear-engine.ts';
import { buildGrammar, type Grammar } from '../../../src/voice/shared/grammar.ts';
import {
  missingPronunciations,
  pronunciationsOf,
  readDictionary,
} from '../../../src/voice/shared/pronunciation.ts';

const dictionary = readDictionary('guard G AA R D\nclosed K L OW Z D\nopen OW P AH N\nno N OW\n');

describe('the grammar of a said list', () => {
  it('has the words of its phrases and no others', () => {
    const { grammar, missing } = buildGrammar({ phrases: ['guard closed'] }, dictionary);
    expect(grammar.lexicon.map(([word]) => word)).toEqual(['guard', 'closed']);
    expect(missing).toEqual([]);
  });

  it('leaves out a phrase with a word nobody can pronounce, and names the word', () => {
    const { grammar, missing } = buildGrammar(
      { phrases: ['guard zorped', 'guard open'] },
      dictionary,
    );
    expect(missing).toEqual(['zorped']);
    expect(grammar.arcs.map((arc) => arc.word)).toEqual(['guard', 'open']);
  });

  it('wants a lead word before a phrase that has one', () => {
    const led = { open: 'guard' };
    const { grammar } = buildGrammar({ phrases: ['open', 'closed'], led }, dictionary);
    const paths = grammar.arcs.map(({ from, to, word }) => [from, to, word]);
    expect(paths).toEqual([
      [0, 2, 'guard'],
      [2, 1, 'open'],
      [0, 1, 'closed'],
    ]);
  });

  it('takes a pronunciation a flow brings along', () => {
    const pronunciations = { zorped: ['Z AO R P T', 'Z AO R P AH D'] };
    const { grammar, missing } = buildGrammar({ phrases: ['zorped'], pronunciations }, dictionary);
    expect(missing).toEqual([]);
    expect(grammar.lexicon).toEqual([
      ['zorped', 'Z AO R P T'],
      ['zorped(2)', 'Z AO R P AH D'],
    ]);
  });
});

describe('pronunciations', () => {
  const whole = loadDictionary();

  it.each([
    ['five', 'F AY F'],
    ['nine', 'N AY N ER'],
    ['three', 'T R IY'],
  ])('know the radiotelephone form of "%s" (ICAO Annex 10, volume II)', (word, phones) => {
    expect(pronunciationsOf(word, whole)).toContain(phones);
  });

  it('are there for every number word an ear may need', () => {
    const words =
      'zero oh one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand point minus plus and thou thousandths inch inches millimetres degrees';
    expect(missingPronunciations([words], whole)).toEqual([]);
  });

  it('are reported missing once a word, for the words that have none', () => {
    expect(missingPronunciations(['guard zorped', 'Zorped!'], dictionary)).toEqual(['zorped']);
  });

  it('of a word called like a member of every object are none', () => {
    expect(pronunciationsOf('constructor', new Map())).toEqual([]);
  });
});

describe('a number by rule', () => {
  it('has no soundless arcs, which the engine cannot hold many of', () => {
    const number = { unit: 'rev/min', min: 100, max: 2000, decimals: 0 };
    const { grammar } = buildGrammar({ phrases: ['next'], number }, numberWords());
    expect(grammar.arcs.length).toBeGreaterThan(100);
    expect(grammar.arcs.filter((arc) => arc.word === '')).toEqual([]);
  });

  it('is still whole: one word is enough for seven, three for a hundred and six', () => {
    const number = { unit: 'rev/min', min: 1, max: 2000, decimals: 0 };
    const { grammar } = buildGrammar({ phrases: ['next'], number }, numberWords());
    expect(accepts(grammar, ['seven'])).toBe(true);
    expect(accepts(grammar, ['one', 'hundred', 'six'])).toBe(true);
    expect(accepts(grammar, ['one', 'hundred', 'and'])).toBe(false);
    expect(accepts(grammar, ['hundred'])).toBe(false);
  });
});

/** Any word sounds like something. */
function numberWords(): ReadonlyMap<string, readonly string[]> {
  const words =
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand and oh next';
  return new Map(words.split(' ').map((word) => [word, ['AA']]));
}

function accepts(grammar: Grammar, words: readonly string[]): boolean {
  let states = new Set([grammar.start]);
  for (const word of words) {
    const arcs = grammar.arcs.filter((arc) => states.has(arc.from) && arc.word === word);
    states = new Set(arcs.map((arc) => arc.to));
  }
  return states.has(grammar.end);
}
