/** What the charts of the app itself must keep, in one place: each is asked of every state and every move of its chart. */

import {
  answerState,
  earOpen,
  type SoundSnapshot,
  type TalkSnapshot,
} from '../../src/bench/index.ts';
import { soundShown } from '../../src/bench/sound-chart.ts';
import { askAgainLimit } from '../../src/bench/talk-chart.ts';

export interface ChartClaim<S> {
  readonly id: string;
  readonly sentence: string;
  /** True where it holds: of a state, and of the move that led to it. */
  holds(state: S, move?: { readonly before: S; readonly event: string }): boolean;
}

const mouth = ({ value }: SoundSnapshot) => value.mouth;

export const soundClaims: readonly ChartClaim<SoundSnapshot>[] = [
  {
    id: 'SOUND-HALF-DUPLEX',
    sentence: 'The ear is never open while the mouth speaks, or while its tail can be heard.',
    holds: (state) => mouth(state) === 'silent' || !earOpen(state),
  },
  {
    id: 'SOUND-TAIL',
    sentence: 'After speech the room falls quiet before anything is listened to.',
    holds: (state, move) =>
      mouth(state) !== 'silent' ||
      !move ||
      mouth(move.before) === 'silent' ||
      move.event === 'quiet',
  },
  {
    id: 'SOUND-DEAF',
    sentence: 'A deaf ear has a reason as soon as it was told one, and an ear that hears has none.',
    holds: ({ value, context }, move) =>
      (value.ear === 'off' || context.deafness === null) &&
      (move?.event !== 'deaf' || context.deafness !== null),
  },
  {
    id: 'SOUND-SHOWN',
    sentence: 'What is shown is what is so: listening means that the ear is open.',
    holds: (state) => (soundShown(state) === 'listening') === earOpen(state),
  },
];

export const talkClaims: readonly ChartClaim<TalkSnapshot>[] = [
  {
    id: 'TALK-PENDING',
    sentence: 'A number waits exactly while an answer is awaited.',
    holds: (state) => (answerState(state) === 'none') === (state.context.pending === null),
  },
  {
    id: 'TALK-LIMIT',
    sentence: 'Misses never grow past the limit.',
    holds: ({ context }) => context.misses >= 0 && context.misses <= askAgainLimit + 1,
  },
  {
    id: 'TALK-FORGIVES',
    sentence: 'What is understood or answered ends the counting of misses.',
    holds: ({ context }, move) =>
      !['understood', 'answered'].includes(move?.event ?? '') || context.misses === 0,
  },
  {
    id: 'TALK-FAR',
    sentence: 'A number far from the expected is questioned, and never only read back.',
    holds: (state, move) => move?.event !== 'number, far' || answerState(state) === 'questioned',
  },
  {
    id: 'TALK-ANSWERED',
    sentence: 'From everywhere an answer leads to where none is awaited.',
    holds: (state, move) => move?.event !== 'answered' || answerState(state) === 'none',
  },
];
