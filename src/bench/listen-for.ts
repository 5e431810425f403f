/**
 * What an ear is to listen for now. An ear that hears freely gets every phrase that counts, to lean towards. One that
 * knows only listed phrases gets the fewest, since each more costs it some of the others: while a number is read back,
 * its answers; else what is asked for, what may be lost, and a few commands, each in one way of saying. What is rare
 * stands behind a lead word. Pure.
 */

import { positionOf } from '../flow/index.ts';
import { slateListen } from './ask-slate.ts';
import { leadListOf, restList } from './lead-lists.ts';
import { leaveWords, phrasesBehind } from './lead-words.ts';
import type { ListenFor } from './ports.ts';
import { isAskedHere, isOpenedHere, isRest } from './rest-words.ts';
import type { RunState } from './run-state.ts';
import { alwaysFirst, type BenchItem, saidNow } from './said-now.ts';
import { answerState } from './talk-chart.ts';

/** An ear is told again at every change of the sound, with the same state. */
const known = new WeakMap<RunState, ListenFor>();

/** The said list as an ear needs it. */
export function listenFor(state: RunState): ListenFor {
  const listed = known.get(state) ?? workOut(state);
  known.set(state, listed);
  return listed;
}

function workOut(state: RunState): ListenFor {
  if (state.slateAsked !== undefined)
    return slateListen(state.job.flow.language, alwaysFirst(state));
  const { items, number } = saidNow(state);
  const { pronunciations } = state.job.flow.file;
  const heard = state.hearsFreely ? items : fewest(state, items);
  const behind = state.hearsFreely ? [] : phrasesBehind(state, items);
  const opened = behind.map(([said]) => said);
  const leave = state.opened === undefined ? [] : leaveWords(state);
  const asks = heard.flatMap(({ kind, phrases }) => (kind === 'ask' ? phrases : []));
  const askedBehind = behind.flatMap(([said, , { kind }]) => (kind === 'ask' ? [said] : []));
  return {
    phrases: [...new Set([...heard.flatMap((item) => item.phrases), ...leave, ...opened])],
    harmless: [...asks, ...askedBehind],
    pausing: alwaysFirst(state).flatMap((item) => item.phrases),
    // A word behind its lead is as rare as one that is led, and is said without it.
    led: { ...Object.fromEntries(opened.map((said) => [said, ''])), ...ledPhrases(heard) },
    ...(number ? { number: wantedOf(number) } : {}),
    ...(Object.keys(pronunciations).length > 0 ? { pronunciations } : {}),
  };
}

function wantedOf({ unit, min, max, decimals }: NonNullable<ListenFor['number']>) {
  return { unit, min, max, decimals };
}

/** What works the numbers out again is rare: "tool carbide", "material brass". "Running …" is led already. */
function ledPhrases(items: readonly BenchItem[]): Readonly<Record<string, string>> {
  const led = items.flatMap(({ adjust, phrases }) =>
    adjust?.type === 'adjust'
      ? phrases.map((phrase) => [phrase, adjust.input.replaceAll('-', ' ')] as const)
      : [],
  );
  return Object.fromEntries(led);
}

function fewest(state: RunState, items: readonly BenchItem[]): readonly BenchItem[] {
  if (answerState(state.talk) !== 'none') return items.filter(answersNumber);
  return items.filter((item) => countsAtOnce(state, item)).map(inFewWays);
}

/** The answers, "repeat", and what goes before everything. */
function answersNumber({ kind, id, ask }: BenchItem): boolean {
  return kind === 'answer' || kind === 'drill' || id === 'hold' || ask === 'repeat';
}

/** True for what an ear of listed words hears without a lead word before it. */
export function countsAtOnce(state: RunState, item: BenchItem): boolean {
  if (item.kind === 'trouble') return state.opened === 'troubles' || isTroubleOfNow(state, item);
  if (item.opens !== undefined) return item.opens === restList || isOpenedHere(state, item.opens);
  if (item.ask !== undefined) return isAskedHere(state, item.ask);
  return leadListOf(item) === undefined && !isRest(state, item);
}

/** The start that does not come is told at once; else "trouble" names them first. */
function isTroubleOfNow({ job, snapshot }: RunState, { id }: BenchItem): boolean {
  const { walks } = job.flow.kind;
  const isStart = positionOf(snapshot).phase === 'start';
  return isStart && walks.some((walk) => walk.everywhere && id === `trouble:${walk.id}`);
}

/** The way that is shown. Who is afraid says "stop stop", and a number is answered as people will. */
function inFewWays(item: BenchItem): BenchItem {
  const all = item.kind === 'drill' || item.kind === 'answer' || item.id === 'carry-on';
  return all ? item : { ...item, phrases: item.phrases.slice(0, 1) };
}
