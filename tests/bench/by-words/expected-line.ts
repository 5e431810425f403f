/**
 * What must be said after a word, at the middle pace: put together from the texts of the flow and its machine kind by the
 * place that was come to. Figures stand for any words here; every figure has tests of its own (tests/flow).
 */

import type { RunState } from '../../../src/bench/index.ts';
import { positionOf } from '../../../src/flow/index.ts';
import { askedAt, itemOf } from './expected-list.ts';
import type { Turn } from './scripted-person.ts';

/** Lead and ask, as patterns with `{name}` for a figure. */
interface Scene {
  readonly title: string;
  readonly lead: string;
  readonly ask: string;
}

export function expectedLine(turn: Turn): string {
  const { word, before, after, event } = turn;
  if (!event) return withoutMove(turn);
  const is = sceneOf(after);
  const was = sceneOf(before);
  if (word === 'interrupted') return `Back after a break. We were at: ${was.title}. ${is.ask}`;
  const [from, to] = [positionOf(before.snapshot), positionOf(after.snapshot)];
  const same = from.step === to.step && from.phase === to.phase && was.title === is.title;
  const { file, kind } = { file: before.job.flow.file, kind: before.job.flow.kind };
  const isNew = to.phase === 'start' && from.step !== to.step;
  const named = isNew ? `${file.steps.find(({ id }) => id === to.step)?.title}.` : '';
  return joined([
    event.type === 'stop' ? kind.prompts.drill : '',
    verdictOf(turn),
    lossOf(turn),
    named,
    same ? is.ask || is.lead : joined([is.lead, is.ask]),
  ]);
}

/** True where the line is the expected one, whatever its figures are. */
export function isSaid(line: string, expected: string): boolean {
  const parts = expected
    .split(/\{[^}]*\}/)
    .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return new RegExp(`^${parts.join('[^{}]+')}$`).test(line) && !/undefined|NaN/.test(line);
}

function joined(lines: readonly string[]): string {
  return lines.filter((line) => line !== '').join(' ');
}

/** A size is read back or questioned; anything else was refused, and the refusal names what is missing. */
function withoutMove({ after, before }: Turn): string {
  const { answer } = after.talk.value;
  if (after !== before && answer === 'readBack') return '{size}. Correct?';
  if (after !== before && answer === 'questioned') {
    return 'Heard {size}. Expected near {size}. Say it again, or say keep.';
  }
  const asked = askedAt(before);
  const { phase } = positionOf(before.snapshot);
  const turns = phase === 'start' || phase === 'cutting' || phase === 'stopping';
  if (asked.length === 0) return 'Not yet: say {words}.';
  if (turns) return `Not yet: say ${asked.map(({ word }) => word).join(' or ')}.`;
  return `Not yet: ${listed(asked.map(({ fact }) => fact.label.toLowerCase()))}.`;
}

function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

function verdictOf({ event, before, after }: Turn): string {
  const step = before.job.flow.steps.get(positionOf(before.snapshot).step);
  if (event?.type !== 'reading' || (step?.kind !== 'inspect' && step?.kind !== 'passes')) return '';
  const [within, rework, lost] =
    step.kind === 'inspect'
      ? [step.within, step.rework, step.lost]
      : [step.next, step.id, step.lost];
  const to = positionOf(after.snapshot).step;
  if (to === lost) return 'Outside its limits: lost.';
  if (to === rework) return step.kind === 'inspect' ? 'More to take off.' : '';
  const { steps } = before.job.flow.file;
  const following = steps[steps.findIndex(({ id }) => id === step.id) + 1]?.id;
  return to === (within ?? following) ? 'Within.' : 'It leads nowhere that the flow names.';
}

/** What was lost is named once, when it is lost. */
function lossOf({ before, after }: Turn): string {
  const { held } = after.snapshot.context;
  const wasHeld = positionOf(before.snapshot).phase === 'hold';
  if (wasHeld || held?.by !== 'loss') return '';
  const { facts } = after.job.flow.kind;
  const lost = facts.filter(({ id }) => held.lost.includes(id));
  return lost.length === 0 ? '' : `Lost: ${listed(lost.map(({ label }) => label.toLowerCase()))}.`;
}

function sceneOf(state: RunState): Scene {
  const { job, snapshot } = state;
  const { step: id, phase, walk } = positionOf(snapshot);
  const step = job.flow.steps.get(id);
  const item = itemOf(job, walk);
  const { prompts } = job.flow.kind;
  const scene = (lead: string, ask: string): Scene => ({
    title: item?.title ?? step?.title ?? 'Done',
    lead,
    ask,
  });
  switch (phase) {
    case 'gate':
      return scene(gateLead(state, step?.title ?? ''), question(state));
    case 'dial':
      return scene(prompts.setDial, '');
    case 'start':
      return scene(prompts.start, '');
    case 'cutting':
      return scene(step?.say ?? '', prompts.watch);
    case 'stopping':
      return scene(prompts.stop, '');
    case 'measure':
      return scene(prompts.measure, '');
    case 'hold':
      return scene(holdLead(state), holdAsk(state));
    case 'walk':
      return scene(item?.say ?? settleLine(state), walkAsk(state));
    case 'end':
      return scene('The job is done. It is in the Logbook.', '');
    default:
      return scene(step?.say ?? '', openAsk(state));
  }
}

/** At the gate of the next pass what is left comes first. */
function gateLead({ job, snapshot }: RunState, title: string): string {
  const step = job.flow.steps.get(positionOf(snapshot).step);
  const measured =
    step?.kind === 'passes' && snapshot.context.readings[step.reading.id] !== undefined;
  return measured ? '{size} left.' : `${title}.`;
}

/** The first that is asked for, by its own question; the speed with the figure to set. */
function question(state: RunState): string {
  const [first] = askedAt(state);
  const { roles, prompts } = state.job.flow.kind;
  if (!first) return '';
  if (first.fact.id !== roles.speed.fact) return first.fact.ask;
  return `${prompts.setSpeed} Say ${first.word}.`;
}

function holdLead({ snapshot }: RunState): string {
  return snapshot.context.held?.by === 'interruption' ? 'Back after a break.' : 'Hold.';
}

function holdAsk(state: RunState): string {
  const [first] = askedAt(state);
  const { roles, prompts } = state.job.flow.kind;
  if (!first) return 'Say carry on.';
  return first.fact.id === roles.power.fact ? prompts.stop : first.fact.ask;
}

function settleLine({ job, snapshot }: RunState): string {
  const { walk } = positionOf(snapshot);
  return job.flow.kind.walks.find(({ id }) => id === walk?.id)?.settle ?? '';
}

/** What a cause asks for: its number, another speed or feed, or the word of its fact. */
function walkAsk(state: RunState): string {
  const { walk } = positionOf(state.snapshot);
  const item = itemOf(state.job, walk);
  if (!item) return question(state);
  if (item.advice) return item.advice.ask;
  if (item.offer) return '{offer}next.';
  if (Object.keys(item.needs).length === 0) return '';
  return `Say ${askedAt(state)[0]?.word ?? 'next'}.`;
}

function openAsk(state: RunState): string {
  const step = state.job.flow.steps.get(positionOf(state.snapshot).step);
  const [first] = askedAt(state);
  if (!first) return '';
  return step?.kind === 'check' ? question(state) : `Say ${first.word}.`;
}
