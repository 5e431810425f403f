/** What is said in a fault walk: first that all stands still, then one cause after the other. */

import { flowTexts, sayIn } from '../texts/index.ts';
import { speedOf } from './chart-world.ts';
import { commandWord } from './command-words.ts';
import type { Job } from './compile.ts';
import { formatOf, shownAs } from './display.ts';
import { textsOf } from './figure-behind.ts';
import type { FaultWalk, WalkItem } from './kind-shape.ts';
import { type FlowSnapshot, planAt, positionOf } from './position.ts';

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

/** The next speed of the card that a walk offers here, in rev/min. */
export function offeredSpeed(job: Job, snapshot: FlowSnapshot): number | undefined {
  const offer = walkNow(job, snapshot)?.item?.offer;
  const plan = planAt(job, snapshot);
  const now = plan && speedOf(plan, job.numbers, snapshot.context);
  const { speeds } = job.card.values;
  if (!offer || now == null || !Array.isArray(speeds)) return undefined;
  const sorted = [...(speeds as readonly number[])].sort((a, b) => a - b);
  return offer === 'lower-speed'
    ? sorted.findLast((speed) => speed < now - 0.5)
    : sorted.find((speed) => speed > now + 0.5);
}

/** "One step lower is three hundred. Say lower speed, or next." */
export function offerLine(job: Job, snapshot: FlowSnapshot): { shown: string; spoken: string } {
  const offer = walkNow(job, snapshot)?.item?.offer;
  if (!offer) return { shown: '', spoken: '' };
  const { language } = job.flow;
  const say = sayIn(language, flowTexts);
  const next = commandWord(language, 'next');
  const lower = offer === 'lower-speed';
  const speed = offeredSpeed(job, snapshot);
  if (speed === undefined) {
    const none = say(lower ? 'noLowerSpeed' : 'noHigherSpeed', { next });
    return { shown: none, spoken: none };
  }
  const word = commandWord(language, lower ? 'lowerSpeed' : 'higherSpeed');
  const line = (speed: string) => say(lower ? 'oneLower' : 'oneHigher', { speed, word, next });
  const format = formatOf('spindleSpeed', job.card.units);
  const { text, spoken } = textsOf(shownAs(speed, 'spindleSpeed', format), language);
  return { shown: line(text), spoken: line(spoken) };
}
