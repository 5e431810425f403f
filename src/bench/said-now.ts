/** The said list with the turn of talk laid over it: while a number is read back, its answers come first. */

import { answers, type SaidItem, type SaidList, saidList, speedWorking } from '../flow/index.ts';
import type { ListenFor } from './ports.ts';
import type { RunState } from './run-state.ts';
import { answerState } from './talk-chart.ts';

/** Answers of the talk itself; they are no events of the flow. */
export type TalkAnswer = keyof typeof answers;

export interface BenchItem extends Omit<SaidItem, 'kind'> {
  readonly kind: SaidItem['kind'] | 'answer';
  readonly answer?: TalkAnswer;
  /** Asks for the keyboard, or for the words of a note. */
  readonly note?: true;
}

export interface BenchList {
  readonly items: readonly BenchItem[];
  readonly number?: NonNullable<SaidList['number']>;
  /** The speed that runs may be told: "I am running four hundred". */
  readonly running?: boolean;
}

const correct = answer('correct');
const keep = answer('keep');
const wrong = answer('wrong');

const note: BenchItem = { id: 'note', kind: 'ask', phrases: ['note'], strict: false, note: true };

function answer(name: TalkAnswer): BenchItem {
  const phrases = answers[name];
  return { id: `answer:${name}`, kind: 'answer', phrases, strict: true, answer: name };
}

/** What counts now. While a number waits, moves and gates do not: only its answers, questions, hold and stop. */
export function saidNow(state: RunState): BenchList {
  const list = saidList(state.job, state.snapshot);
  const waiting = answerState(state.talk);
  if (waiting === 'none') {
    const running = speedWorking(state.job, state.snapshot) !== undefined;
    const items = [...list.items, ...(state.undo ? [wrong] : []), note];
    return { ...list, items, ...(running ? { running } : {}) };
  }
  const still = list.items.filter(
    (item) => item.kind === 'ask' || item.kind === 'drill' || item.id === 'hold',
  );
  return { ...list, items: [waiting === 'readBack' ? correct : keep, wrong, ...still] };
}

/** The same list as an ear needs it. */
export function listenFor(state: RunState): ListenFor {
  const { items, number } = saidNow(state);
  const { pronunciations } = state.job.flow.file;
  return {
    phrases: items.flatMap((item) => item.phrases),
    ...(number
      ? {
          number: {
            unit: number.unit,
            min: number.min,
            max: number.max,
            decimals: number.decimals,
          },
        }
      : {}),
    ...(Object.keys(pronunciations).length > 0 ? { pronunciations } : {}),
  };
}
