/** The list an ear gets: small where it matters, and nothing out of reach. */
import { describe, expect, it } from 'vitest';
import { listenFor, saidNow } from '../../src/bench/index.ts';
import { wholeJob } from '../browser/hinge-pin.ts';
import { begun, hears, type Turn, toBar } from './scripted.ts';

const turns: Turn[] = [begun()];
for (const word of wholeJob) turns.push(...turns.slice(-1).map((turn) => hears(turn, word)));
/** Each place once. */
const working = [...new Map(turns.map((turn) => [turn.at, turn])).values()].filter(
  ({ at }) => !at.startsWith('end/'),
);
const at = (place: string) => {
  const turn = turns.find((one) => one.at === place);
  if (!turn) throw new Error(`the job is never at ${place}`);
  return turn;
};
const phrasesAt = (turn: Turn) => listenFor(turn.state).phrases;
const changes = ({ state: { job, snapshot } }: Turn) => [job.numbers, snapshot.value];

describe('the list of an ear that knows only listed words', () => {
  it('is a quarter as long as all that counts, for most of the job', () => {
    const sizes = working.map((turn) => phrasesAt(turn).length).sort((a, b) => a - b);
    const free = working.map(
      ({ state }) => listenFor({ ...state, hearsFreely: true }).phrases.length,
    );
    const median = sizes[Math.floor(sizes.length / 2)] ?? 0;
    expect(median).toBeLessThanOrEqual(25);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(32);
    expect(4 * median).toBeLessThan(free.sort((a, b) => a - b)[Math.floor(free.length / 2)] ?? 0);
  });

  it('has "stop", "hold" and "repeat" everywhere, and "next" but where a number waits for its answer', () => {
    for (const turn of working) {
      const list = phrasesAt(turn);
      expect(list, turn.at).toEqual(expect.arrayContaining(['stop', 'hold', 'repeat']));
      const waits = turn.state.talk.context.pending !== null;
      expect(list.includes('next'), turn.at).toBe(!waits);
    }
  });

  it('has "wrong" wherever there is something to take back', () => {
    for (const turn of working) {
      const something = turn.state.undo ?? turn.state.talk.context.pending;
      expect(phrasesAt(turn).includes('wrong'), turn.at).toBe(something !== null);
    }
  });

  it('is tiny while a number is read back: its answers, "repeat", "hold", "stop", and another number', () => {
    const { phrases, number } = listenFor(hears(begun(), ...toBar, '25').state);
    expect([...phrases].sort()).toEqual([
      'correct',
      'hold',
      'no wrong',
      'repeat',
      'say again',
      'stop',
      'stop stop',
      'wrong',
      'yes correct',
    ]);
    expect(number).toMatchObject({ unit: 'mm' });
  });

  it('has every answer that is asked for and every loss, in the way that is shown', () => {
    for (const turn of working) {
      if (turn.state.talk.context.pending) continue;
      const told = saidNow(turn.state).items.filter(
        ({ kind }) => kind === 'fact' || kind === 'loss',
      );
      const words = told.flatMap(({ phrases }) => phrases.slice(0, 1));
      expect(phrasesAt(turn), turn.at).toEqual(expect.arrayContaining(words));
    }
  });

  it('has the lead words of material, tool and speed at once only where a dial is to be set', () => {
    const leads = ['other material', 'other tool', 'other speed'];
    const dial = working.filter((turn) => turn.at.endsWith('/dial'));
    const others = working.filter((turn) => !turn.at.endsWith('/dial'));
    expect(dial.length).toBeGreaterThan(0);
    for (const turn of dial) expect(phrasesAt(turn)).toEqual(expect.arrayContaining(leads));
    for (const turn of others)
      expect(leads.filter((lead) => phrasesAt(turn).includes(lead))).toEqual([]);
    for (const turn of working) expect(phrasesAt(turn)).not.toContain('brass');
  });

  it('does not wait for a figure that is not there', () => {
    expect(phrasesAt(begun())).not.toContain('depth');
    expect(phrasesAt(at('turn-shank/dial'))).toContain('depth');
  });
});

describe('a lead word', () => {
  const gate = at('face/gate');

  it('opens its words, bare, beside those that count', () => {
    const opened = hears(gate, 'other material');
    expect(opened.line).toBe('Which one?');
    const { phrases, led } = listenFor(opened.state);
    expect(phrases).toEqual(expect.arrayContaining([...phrasesAt(gate), 'brass', 'never mind']));
    expect(led).toMatchObject({ brass: '' });
    expect(changes(opened)).toEqual(changes(gate));
    const always = ['stop', 'hold', 'repeat', 'next', 'wrong'];
    expect(phrasesAt(opened)).toEqual(expect.arrayContaining(always));
    expect(phrasesAt(hears(gate, 'slate'))).toEqual(expect.arrayContaining(always));
  });

  it('of all other words opens what is rare here and the leads themselves', () => {
    const rare = ['where am i', 'feed', 'note', 'slate', 'louder', 'other material', 'what is'];
    const opened = hears(gate, 'other words');
    expect(phrasesAt(gate).filter((phrase) => rare.includes(phrase))).toEqual([]);
    expect(phrasesAt(opened)).toEqual(expect.arrayContaining([...rare, ...phrasesAt(gate)]));
    expect(listenFor(opened.state).harmless).toEqual(expect.arrayContaining(rare));
    expect(hears(opened, 'feed').line).toBe(hears(gate, 'feed').line);
    expect(hears(opened, 'other material', 'brass').line).toBe(hears(gate, 'brass').line);
  });

  it('is named by "what can I say", and behind it the same question names its words', () => {
    expect(hears(gate, 'what can i say').line).toMatch(/ or other words\.$/);
    const opened = hears(gate, 'other words', 'what can i say');
    expect(opened.line).toContain('where am i');
    expect(phrasesAt(opened)).toContain('where am i');
    const free = { ...gate, state: { ...gate.state, hearsFreely: true } };
    expect(hears(free, 'what can i say').line).not.toContain('other words');
  });

  it('and then a word of its list do what the whole phrase does', () => {
    const pairs = [
      ['other material', 'brass', 'brass'],
      ['other speed', 'three hundred', 'running three hundred'],
      ['what is', 'chuck', 'what is a chuck'],
      ['other pace', 'familiar', 'familiar'],
    ] as const;
    for (const [lead, rest, whole] of pairs) {
      const from = turns.find(
        (turn) =>
          hears(turn, lead).line === 'Which one?' &&
          listenFor(hears(turn, lead).state).phrases.includes(rest),
      );
      if (!from) throw new Error(`"${rest}" is never behind "${lead}"`);
      const two = hears(from, lead, rest);
      expect(two.line).toBe(hears(from, whole).line);
      expect(two.state.opened).toBeUndefined();
      expect(phrasesAt(two)).toContain('stop');
    }
  });

  it('is left by "never mind" or "wrong", which takes nothing else back', () => {
    for (const word of ['never mind', 'wrong']) {
      const left = hears(gate, 'other tool', word);
      expect(left.line).toBe('Back to the job.');
      expect(changes(left)).toEqual(changes(gate));
      expect(phrasesAt(left)).toEqual(phrasesAt(gate));
    }
  });

  it('leaves the gate as it was: its words still count', () => {
    const [answer = ''] = phrasesAt(gate);
    expect(hears(gate, 'what is', answer).at).toBe(hears(gate, answer).at);
  });
});

it('an ear that hears freely leans towards every word that counts', () => {
  const { phrases } = listenFor({ ...at('face/gate').state, hearsFreely: true });
  expect(phrases).toEqual(expect.arrayContaining(['brass', 'speed', 'own pace']));
});
