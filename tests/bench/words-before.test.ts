/** What is shown to be said before a word is what makes it count, wherever the job stands. */
import { describe, expect, it } from 'vitest';
import { type BenchItem, listenFor, saidNow, viewNow, wordsBefore } from '../../src/bench/index.ts';
import { figureOfAsk } from '../../src/bench/why-that.ts';
import { wholeJob } from '../browser/hinge-pin.ts';
import { begun, hears, type Turn } from './scripted.ts';

const turns: Turn[] = [begun()];
for (const word of wholeJob) turns.push(...turns.slice(-1).map((turn) => hears(turn, word)));
/** Each place once; while a number waits for its answer nothing else counts. */
const working = [...new Map(turns.map((turn) => [turn.at, turn])).values()].filter(
  ({ at, state }) => !at.startsWith('end/') && state.talk.context.pending === null,
);

/** Where there is no such figure its question is not shown, and no ear of listed words waits for it. */
function isShown({ state }: Turn, { ask }: BenchItem): boolean {
  const asksFigure = ask === 'speed' || ask === 'feed' || ask === 'depth' || ask === 'left';
  return !asksFigure || figureOfAsk(ask, viewNow(state)) !== undefined;
}

/** True where the shown phrase of an item, or what is left of it behind its lead, is listened for. */
function isHeard(turn: Turn, [shown = '']: readonly string[]): boolean {
  return listenFor(turn.state).phrases.some((phrase) => shown.endsWith(phrase));
}

describe('the words to be said before a word', () => {
  it('make an ear of listed words hear it, in every place of the job', () => {
    for (const turn of working) {
      const shown = saidNow(turn.state).items.filter((item) => isShown(turn, item));
      const leads = new Map(shown.map((item) => [wordsBefore(turn.state, item).join(), item]));
      const unheard = [...leads].flatMap(([lead, one]) => {
        const opened = hears(turn, ...wordsBefore(turn.state, one));
        return shown.filter(
          (item) => wordsBefore(turn.state, item).join() === lead && !isHeard(opened, item.phrases),
        );
      });
      expect(unheard, turn.at).toEqual([]);
    }
    expect(working.length).toBeGreaterThan(40);
  });

  it('are none where the ear hears it at once, and none for an ear that hears freely', () => {
    for (const turn of working) {
      const { phrases } = listenFor(turn.state);
      for (const item of saidNow(turn.state).items) {
        const at = `${turn.at}: ${item.id}`;
        const isNow = phrases.includes(item.phrases[0] ?? '');
        expect(wordsBefore(turn.state, item).length === 0, at).toBe(isNow);
        expect(wordsBefore({ ...turn.state, hearsFreely: true }, item)).toEqual([]);
      }
    }
  });
});
