/**
 * What an ear is to listen for now. An ear that hears freely gets every phrase that counts, to lean towards. One that
 * knows only listed phrases gets the fewest: while a number is read back, its answers; where the machine's state is
 * asked for, its words; and what is rare stands behind a lead word. Pure.
 */

import { type Ask, positionOf, type View } from '../flow/index.ts';
import { slateListen } from './ask-slate.ts';
import { type LeadList, leadListOf, leaveWords, phrasesBehind } from './lead-words.ts';
import type { ListenFor } from './ports.ts';
import { figureOfAsk } from './replies.ts';
import type { RunState } from './run-state.ts';
import { alwaysFirst, type BenchItem, saidNow } from './said-now.ts';
import { answerState } from './talk-chart.ts';
import { viewNow } from './view-now.ts';

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
  const behind = state.hearsFreely ? [] : phrasesBehind(state, items).map(([said]) => said);
  const leave = state.opened === undefined ? [] : leaveWords(state);
  const phrases = [...new Set([...heard.flatMap((item) => item.phrases), ...leave, ...behind])];
  return {
    phrases,
    harmless: heard.flatMap((item) => (item.kind === 'ask' ? item.phrases : [])),
    pausing: alwaysFirst(state).flatMap((item) => item.phrases),
    // A word behind its lead is as rare as one that is led, and is said without it.
    led: { ...Object.fromEntries(behind.map((said) => [said, ''])), ...ledPhrases(heard) },
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
  const hidden = hiddenLists(state, items);
  const view = viewNow(state);
  // At a gate the troubles are named by "trouble" first.
  const troubles = state.opened === 'troubles' || positionOf(state.snapshot).phase !== 'gate';
  return items.filter((item) => {
    if (item.kind === 'trouble' && !troubles) return false;
    if (item.opens !== undefined) return hidden(item.opens);
    const list = leadListOf(item);
    if (list !== undefined && hidden(list)) return false;
    return item.ask === undefined || hasAnswer(view, item.ask);
  });
}

/** The answers, "repeat", and what goes before everything. */
function answersNumber({ kind, id, ask }: BenchItem): boolean {
  return kind === 'answer' || kind === 'drill' || id === 'hold' || ask === 'repeat';
}

/** Which lists stand behind their lead words here. */
function hiddenLists(state: RunState, items: readonly BenchItem[]): (list: LeadList) => boolean {
  const asksState = items.some(({ kind }) => kind === 'fact');
  if (asksState) return () => true;
  const works = (list: LeadList) => list === 'speeds' || list.startsWith('input:');
  // Where a dial is to be set the numbers are told: there they are changed in one breath.
  if (positionOf(state.snapshot).phase === 'dial') return (list) => !works(list);
  return works;
}

const figures: readonly Ask[] = ['speed', 'feed', 'depth', 'left'];

/** Where there is no such figure, nobody is heard asking for it. */
function hasAnswer(view: View, ask: Ask): boolean {
  return !figures.includes(ask) || figureOfAsk(ask, view) !== undefined;
}
