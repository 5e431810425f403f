/** What was heard against what may be said. Confusions are made up from ordinary English: common practice, no source. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Match, matchHeard, type Sayable } from '../../src/words/index.ts';

const COMMANDS: readonly Sayable[] = [
  ['next', 'next', 'carry on'],
  ['back', 'back'],
  ['repeat', 'repeat', 'say again'],
  ['why', 'why'],
  ['hold', 'hold'],
  ['stop', 'stop', 'emergency stop'],
  ['speed', 'speed', 'what speed'],
  ['feed', 'feed'],
  ['left', 'how much is left'],
  ['words', 'what can i say'],
].map(([id = '', ...phrases]) => ({ id, phrases, group: 'command' }));

const GATES: readonly Sayable[] = [
  { id: 'guard=closed', phrases: ['guard closed', 'closed'], group: 'closed', strict: true },
  { id: 'guard=open', phrases: ['guard open', 'open'], group: 'open', strict: true },
  { id: 'key=out', phrases: ['key out', 'chuck key out'], group: 'out', strict: true },
  { id: 'power=not-on', phrases: ['will not start', "won't start"], group: 'fault' },
];

const ALL = [...COMMANDS, ...GATES];

/** "closed" → its id; "?" several; "-" none. */
function taken(...texts: readonly string[]): string {
  const match: Match = matchHeard(texts, ALL);
  return match.kind === 'one'
    ? match.id
    : match.kind === 'several'
      ? `? ${match.ids.join(' ')}`
      : '-';
}

function takes(
  title: string,
  rows: readonly (readonly [heard: string | readonly string[], id: string])[],
): void {
  describe(title, () => {
    it.each(rows.map(([heard, id]) => [[heard].flat(), id] as const))('%j is %s', (heard, id) => {
      expect(taken(...heard)).toBe(id);
    });
  });
}

takes('word for word', [
  ['next', 'next'],
  ['Next!', 'next'],
  ['carry on', 'next'],
  ['okay next please', 'next'],
  ['um, repeat', 'repeat'],
  ['so, how much is left', 'left'],
  ['guard closed', 'guard=closed'],
  ['the guard closed', 'guard=closed'],
  ['Closed.', 'guard=closed'],
  ['okay, closed', 'guard=closed'],
  ['e-stop', 'stop'],
  ['will not start', 'power=not-on'],
  ["won't start", 'power=not-on'],
  [['gibberish', 'repeat'], 'repeat'],
  [['next', 'back'], 'next'],
]);

takes('near sounds, for what is not a gate', [
  ['necks', 'next'],
  ['carry one', 'next'],
  ['what can eye say', 'words'],
  ['how much is lift', 'left'],
  ['how much left', 'left'],
  ['repeats', 'repeat'],
]);

takes('other talk', [
  ['', '-'],
  ['please', '-'],
  ['the next bus is late', '-'],
  ['did he say next', '-'],
  ['is the guard closed', '-'],
  ['i think the guard closed by itself', '-'],
  ['guard closed and key out', '-'],
  ['what speed was that train', '-'],
  ['weather', '-'],
  ['text me', '-'],
]);

takes('denials', [
  ['not closed', '-'],
  ["isn't closed", '-'],
  ['guard not closed', '-'],
  ["guard isn't closed", '-'],
  ['never closed', '-'],
  ['nearly closed', '-'],
  ['half closed', '-'],
  ['unclosed', '-'],
  ['not next', '-'],
  ['no stop', '-'],
  ['start', '-'],
  ['will start', '-'],
  [['closed', 'not closed'], '-'],
  [['guard closed', "guard isn't closed"], '-'],
]);

takes('gates by near sounds or by the ear’s second thought', [
  ['guard close', '-'],
  ['clothes', '-'],
  ['guard clothes', '-'],
  ['he out', '-'],
  ['closet', '-'],
  ['opened', '-'],
  [['clothes', 'closed'], '-'],
  [['guard clothed', 'guard closed'], '-'],
]);

takes('ties', [
  [['gibberish', 'next', 'back'], '? next back'],
  [['spade', 'mumble'], '-'],
  [['mumble', 'repeat', 'repeat'], 'repeat'],
]);

describe('a match', () => {
  it('says which phrase and is fully sure of the likeliest text only', () => {
    expect(matchHeard(['carry on'], ALL)).toEqual({
      kind: 'one',
      id: 'next',
      phrase: 'carry on',
      sure: 1,
    });
    const second = matchHeard(['gibberish', 'carry on'], ALL);
    expect(second.kind === 'one' && second.sure < 1).toBe(true);
    const near = matchHeard(['necks'], ALL);
    expect(near.kind === 'one' && near.sure < 0.9).toBe(true);
  });

  it('asks when two sayables share a phrase', () => {
    const twins = ['a', 'b'].map((id) => ({ id, phrases: ['clear'], group: 'g', strict: true }));
    expect(matchHeard(['clear'], twins)).toEqual({ kind: 'several', ids: ['a', 'b'] });
  });

  it('takes numerals and number words for each other', () => {
    const tools = [2, 3].map((n) => ({ id: `t${n}`, phrases: [`tool ${n}`], group: 'choice' }));
    expect(matchHeard(['tool two'], tools)).toMatchObject({ id: 't2' });
    expect(matchHeard(['tool 3'], tools)).toMatchObject({ id: 't3' });
  });

  it('never takes a word in force for another, nor a word between two groups for either', () => {
    const choices = [
      { id: 'a', phrases: ['feed on'], group: 'on' },
      { id: 'b', phrases: ['seed on'], group: 'on' },
      { id: 'c', phrases: ['sheet'], group: 'other' },
    ];
    expect(matchHeard(['sheet on'], choices)).toEqual({ kind: 'none' });
    expect(matchHeard(['cheat on'], choices)).toEqual({ kind: 'none' });
  });

  it('keeps a filler that is part of a phrase', () => {
    const turns = [
      { id: 'turn', phrases: ['turn'], group: 'g', strict: true },
      { id: 'right', phrases: ['turn right'], group: 'g', strict: true },
      { id: 'answer', phrases: ['right'], group: 'g' },
    ];
    expect(matchHeard(['turn right'], turns)).toMatchObject({ id: 'right' });
    expect(matchHeard(['right, turn'], turns)).toMatchObject({ id: 'turn' });
    expect(matchHeard(['right'], turns)).toMatchObject({ id: 'answer' });
    expect(matchHeard(['okay right'], turns)).toMatchObject({ id: 'answer' });
  });

  it('is none when nothing may be said', () => {
    expect(matchHeard(['next'], [])).toEqual({ kind: 'none' });
    expect(matchHeard([], ALL)).toEqual({ kind: 'none' });
  });
});

const WORDS = [
  ...new Set(ALL.flatMap(({ phrases }) => phrases.flatMap((phrase) => phrase.split(' ')))),
  'not',
  'is',
  "isn't",
  'the',
  'please',
  'um',
  'close',
  'clothes',
  'unlocked',
  'guards',
  'he',
  'no',
  'two',
  'and',
];
const FILLERS = new Set(['the', 'please', 'um', 'and']);

describe('[gate] whatever is heard', () => {
  it('a strict sayable is taken only when one of its phrases was said word for word, fillers aside', () => {
    const text = fc.array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(fc.array(text, { minLength: 1, maxLength: 4 }), (texts) => {
        const match = matchHeard(
          texts.map((words) => words.join(' ')),
          ALL,
        );
        const gate =
          match.kind === 'one'
            ? GATES.find(({ id, strict }) => id === match.id && strict)
            : undefined;
        const bare = (texts[0] ?? []).filter((word) => !FILLERS.has(word)).join(' ');
        return gate === undefined || gate.phrases.includes(bare);
      }),
      { seed: 20261125, numRuns: 3000 },
    );
  });

  it('a phrase with one more real word before or behind it is not taken', () => {
    const phrase = fc.constantFrom(
      ...ALL.flatMap(({ phrases }) => phrases).filter((one) => one.includes(' ')),
    );
    fc.assert(
      fc.property(
        phrase,
        fc.constantFrom('bus', 'yesterday', 'garden', 'he'),
        fc.boolean(),
        (words, more, first) => {
          return matchHeard([first ? `${more} ${words}` : `${words} ${more}`], ALL).kind === 'none';
        },
      ),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
