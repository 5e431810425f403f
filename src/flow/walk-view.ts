/** What is said in a fault walk: first that all stands still, then one cause after the other. */

import { flowTexts, sayIn } from '../texts/index.ts';
import type { Quantity } from '../trade/index.ts';
import { commandWord } from './command-words.ts';
import type { Job } from './compile.ts';
import { formatOf, shownAs } from './display.ts';
import { textsOf } from './figure-behind.ts';
import type { FaultWalk, WalkItem } from './kind-shape.ts';
import { type FlowSnapshot, planAt, positionOf } from './position.ts';
import type { ValueRef } from './words-shape.ts';

/** The walk a snapshot stands in, and its item; no item while it must first stand still. */
export function walkNow(
  job: Job,
  snapshot: FlowSnapshot,
): { readonly walk: FaultWalk; readonly item?: WalkItem } | undefined {
  const at = positionOf(snapshot).walk;
  const walk = at && job.flow.kind.walks.find((one) => one.id === at.id);
  if (!walk) return undefined;
  const item = walk.items.find((one) => one.id === at.item);
  return item ? { walk, item } : { walk };
}

type OfferId = NonNullable<WalkItem['offer']>;

/** What an offer changes, which way, and how it is said. */
const offers = {
  'lower-speed': {
    of: 'speed',
    up: false,
    word: 'lowerSpeed',
    one: 'oneLower',
    none: 'noLowerSpeed',
  },
  'higher-speed': {
    of: 'speed',
    up: true,
    word: 'higherSpeed',
    one: 'oneHigher',
    none: 'noHigherSpeed',
  },
  'finer-feed': { of: 'feed', up: false, word: 'finerFeed', one: 'oneFiner', none: 'noFinerFeed' },
  'coarser-feed': {
    of: 'feed',
    up: true,
    word: 'coarserFeed',
    one: 'oneCoarser',
    none: 'noCoarserFeed',
  },
} as const;

/** What a walk offers here: the next speed of the card in its base unit, or the next feed in mm/rev, and its word. */
export interface Offered {
  readonly of: 'speed' | 'feed';
  readonly value: number;
  readonly word: (typeof offers)[OfferId]['word'];
}

function quantityOf({ flow }: Job, of: Offered['of']): Quantity {
  return of === 'feed' ? 'feedPerRev' : flow.kind.speedQuantity;
}

export function offeredHere(job: Job, snapshot: FlowSnapshot): Offered | undefined {
  const id = walkNow(job, snapshot)?.item?.offer;
  if (!id) return undefined;
  const { of, up, word } = offers[id];
  const ref = refOf(job, snapshot, of);
  const now = ref && job.numbers.number(ref, snapshot.context.readings, quantityOf(job, of));
  const listed = job.card.values[of === 'speed' ? 'speeds' : 'feeds'];
  if (now === undefined || !Array.isArray(listed)) return undefined;
  const sorted = [...(listed as readonly number[])].sort((a, b) => a - b);
  const far = now * 1e-3;
  const value = up
    ? sorted.find((one) => one > now + far)
    : sorted.findLast((one) => one < now - far);
  return value === undefined ? undefined : { of, value, word };
}

function refOf(job: Job, snapshot: FlowSnapshot, of: 'speed' | 'feed'): ValueRef | undefined {
  const step = planAt(job, snapshot)?.step;
  return step?.kind === 'cut' || step?.kind === 'passes' ? step[of] : undefined;
}

/** "One step lower is three hundred. Say lower speed, or next." */
export function offerLine(job: Job, snapshot: FlowSnapshot): { shown: string; spoken: string } {
  const id = walkNow(job, snapshot)?.item?.offer;
  if (!id) return { shown: '', spoken: '' };
  const { language } = job.flow;
  const say = sayIn(language, flowTexts);
  const next = commandWord(language, 'next');
  const { of, one, none } = offers[id];
  const offered = offeredHere(job, snapshot);
  if (offered === undefined) {
    const line = say(none, { next });
    return { shown: line, spoken: line };
  }
  const word = commandWord(language, offered.word);
  const line = (value: string) => say(one, { value, word, next });
  const quantity = quantityOf(job, of);
  const format = formatOf(quantity, job.card.units);
  const { text, spoken } = textsOf(shownAs(offered.value, quantity, format), language);
  return { shown: line(text), spoken: line(spoken) };
}
