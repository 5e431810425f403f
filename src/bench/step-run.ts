/** One thing heard, one step of a run: what is believed after it, and what the shell must do. Pure. */

import {
  type Adjustment,
  type Ask,
  accepts,
  commandWord,
  type FlowEvent,
  positionOf,
  readingFigures,
  speedHeard,
  speedSpoken,
  stepJob,
} from '../flow/index.ts';
import { benchTexts, sayIn } from '../texts/index.ts';
import { normalise } from '../words/index.ts';
import { adjustRun } from './adjust-run.ts';
import { type Advised, advise } from './advice.ts';
import { announce, joinLines } from './announce.ts';
import {
  missedQuestion,
  openSlate,
  takeSlate,
  takeSlateQuestion,
  withoutQuestion,
} from './ask-slate.ts';
import { asked, refused, speak, talked } from './beside-run.ts';
import { cutShows } from './cut-shows.ts';
import { driftNow } from './drift-line.ts';
import { entryOf, withHeard, withUnderstood } from './entry.ts';
import { isFar } from './far-reading.ts';
import { keptReading } from './kept-reading.ts';
import { atLead, openLead, phrasesBehind, withoutLead } from './lead-words.ts';
import { passQuestion, takeOption, tellPart, tellTerm } from './learn-run.ts';
import { isMachineWord, isTroubleWord } from './machine-words.ts';
import { takeManner } from './manner-run.ts';
import { noteHelp, noteIn, takeNote } from './note-run.ts';
import { takePace } from './pace-run.ts';
import type { Heard } from './ports.ts';
import {
  nameTheState,
  outOfRange,
  questionFar,
  readBack,
  refusal,
  replyTo,
  troubleReply,
} from './replies.ts';
import type { Effect, RunState, RunStep } from './run-state.ts';
import { alwaysFirst, type BenchItem, type BenchList, saidNow } from './said-now.ts';
import { answerState, askAgainLimit, type PendingNumber } from './talk-chart.ts';
import { tell } from './tell.ts';
import { type Understood, understand } from './understand.ts';
import { understoodAs } from './understood.ts';
import { baseOf } from './unit-of-reading.ts';
import { viewNow } from './view-now.ts';
import { figureOfAsk, whyThat } from './why-that.ts';

/** Below this an ear's own doubt is taken seriously where harm is possible. */
const leastSureForGate = 0.6;
/** A sentence this long that matches nothing is people talking, not an answer. */
const longestMiss = 4;

function saysOf({ job }: RunState) {
  return sayIn(job.flow.language, benchTexts);
}

function sayKeep(state: RunState): string {
  const keep = commandWord(state.job.flow.language, 'keep');
  return saysOf(state)('sayKeep', { keep });
}

/** Something came through the door. */
export function hear(state: RunState, heard: Heard): RunStep {
  if (state.slateAsked === undefined) return hearAtLead(state, heard);
  // Keys go by the screen, which shows the job.
  const byVoice = heard.from === 'speech' || heard.from === 'script';
  const question = byVoice ? takeSlateQuestion(state, heard, alwaysFirst(state)) : null;
  return question ?? hearJob(withoutQuestion(state), heard);
}

/** Behind a lead word, the rest of the phrase is enough. */
function hearAtLead(state: RunState, heard: Heard): RunStep {
  if (state.opened === undefined) return hearJob(state, heard);
  const { language } = state.job.flow;
  const { items } = saidNow(state);
  const stayed = atLead(state, heard, items);
  if (stayed) return stayed;
  const said = normalise(heard.text, language);
  const behind = phrasesBehind(state, items);
  const [, phrase] = behind.find(([rest]) => rest === said) ?? [];
  const whole = phrase === undefined ? heard : { ...heard, text: phrase };
  return withHeard(hearJob(withoutLead(state), whole), heard);
}

function hearJob(state: RunState, heard: Heard): RunStep {
  const list = saidNow(state);
  const { language } = state.job.flow;
  const note = noteIn(heard.text, language);
  if (note !== undefined) return hearNote(state, heard, note, list);
  const meant = understand(heard, list, language);
  const step = takeMeant(state, heard, meant, list);
  return withUnderstood(step, understoodAs(meant, list, language));
}

function takeMeant(state: RunState, heard: Heard, meant: Understood, list: BenchList): RunStep {
  switch (meant.kind) {
    case 'item':
      return takeItem(state, heard, meant.item, meant.sure);
    case 'about':
      return takeAbout(state, heard, meant);
    case 'slate':
      return takeSlate(state, heard, meant.question);
    case 'running':
      return takeRunning(state, heard, meant);
    case 'number':
      return takeNumber(state, heard, meant, list);
    case 'several': {
      const words = understoodAs(meant, list, state.job.flow.language) ?? '';
      return asked(state, heard, saysOf(state)('sayAgainWhich', { words }));
    }
    case 'bare-yes':
      return bareYes(state, heard);
    default:
      return miss(state, heard, meant);
  }
}

/** "No, stop" may be heard as a note: the drill comes first. */
function hearNote(state: RunState, heard: Heard, text: string, list: BenchList): RunStep {
  if (!isDrill(list, text)) return takeNote(state, heard, text);
  return withHeard(hearJob(state, { ...heard, text }), heard);
}

function isDrill({ items }: BenchList, text: string): boolean {
  const said = normalise(text);
  return items.some(({ kind, phrases }) => kind === 'drill' && phrases.includes(said));
}

/** The ear heard speech that matched nothing. */
export function missed(state: RunState, heard: Heard): RunStep {
  if (state.slateAsked !== undefined) return missedQuestion(state, heard);
  const words = heard.text.trim() === '' ? 1 : heard.text.trim().split(/\s+/).length;
  return miss(state, heard, { kind: 'nothing', words });
}

function takeItem(state: RunState, heard: Heard, item: BenchItem, sure: number): RunStep {
  if (item.strict && heard.from === 'speech' && sure < leastSureForGate) {
    return asked(state, heard, saysOf(state)('didYouSay', { word: item.phrases[0] ?? '' }));
  }
  const ready = talked(state, { type: 'understood' });
  if (item.id === 'next' && state.question) return passQuestion(ready, heard);
  const learnt = takeLearning(ready, heard, item);
  if (learnt) return learnt;
  if (item.answer) return takeAnswer(ready, heard, item.answer);
  if (item.adjust) return takeAdjustment(ready, heard, item.adjust, item.phrases[0] ?? '');
  if (item.manner) return takeManner(ready, heard, item.manner);
  if (item.slate) return openSlate(ready, heard);
  if (item.opens !== undefined) return openLead(ready, heard, item.opens);
  if (item.note) return askNote(ready, heard);
  if (item.ask) return takeAsk(ready, heard, item.ask);
  return item.event ? takeEvent(ready, heard, item.event) : { state: ready, effects: [] };
}

/** What changes how the job is told, and nothing in the job. */
function takeLearning(state: RunState, heard: Heard, item: BenchItem): RunStep | undefined {
  if (item.pace) return takePace(state, heard, item.pace);
  if (item.term !== undefined) return tellTerm(state, heard, item.term);
  if (item.part !== undefined) return tellPart(state, heard, item.part);
  if (item.option === null) return passQuestion(state, heard);
  return item.option === undefined ? undefined : takeOption(state, heard, item.option);
}

function takeAbout(
  state: RunState,
  heard: Heard,
  { ask, name }: Extract<Understood, { kind: 'about' }>,
): RunStep {
  const ready = talked(state, { type: 'understood' });
  return ask === 'where' ? tellPart(ready, heard, name) : tellTerm(ready, heard, name);
}

/** The keyboard comes up for it. */
function askNote(state: RunState, heard: Heard): RunStep {
  return asked({ ...state, noteAsked: state.seq }, heard, noteHelp(state));
}

function takeAsk(state: RunState, heard: Heard, ask: Ask): RunStep {
  const figure = figureOfAsk(ask, viewNow(state));
  const told = figure === undefined ? state : { ...state, told: { figure } };
  // An ear of few phrases listens for the troubles themselves from here on.
  const opened = ask === 'trouble' ? { ...told, opened: 'troubles' } : told;
  return asked(opened, heard, replyTo(ask, state));
}

function takeRunning(
  state: RunState,
  heard: Heard,
  { speed: told, sure }: Extract<Understood, { kind: 'running' }>,
): RunStep {
  const speed = speedHeard(state.job, told);
  if (heard.from === 'speech' && sure < leastSureForGate) {
    const words = speedSpoken(state.job, speed);
    return asked(state, heard, saysOf(state)('didYouSayRunning', { speed: words }));
  }
  return takeAdjustment(
    talked(state, { type: 'understood' }),
    heard,
    { type: 'running', speed },
    '',
  );
}

/** Everything that depends is worked out again; what a rule refuses changes nothing. */
function takeAdjustment(state: RunState, heard: Heard, change: Adjustment, word: string): RunStep {
  const adjusted = adjustRun(state, change, word);
  const { line } = adjusted;
  if (!adjusted.ok) return refused(toldOfRefusal(state, line, adjusted.source), heard, line);
  const { snapshot } = adjusted.next;
  const entry = { ...entryOf(state, heard, { ...change }, 'moved'), said: line };
  const next: RunState = {
    ...state,
    ...adjusted.next,
    seq: state.seq + 1,
    undo: mayUndo(state, snapshot) ? before(state) : null,
    lastLine: line,
    told: { figure: change.type === 'feeding' ? 'feed' : 'speed' },
  };
  const cue: Effect = { kind: 'cue', cue: 'heard' };
  return { state: next, effects: [{ kind: 'append', entry }, cue, ...speak(line)] };
}

function before({ job, snapshot, readings }: RunState): NonNullable<RunState['undo']> {
  return { job, snapshot, readings };
}

function takeAnswer(state: RunState, heard: Heard, answer: BenchItem['answer']): RunStep {
  const { pending } = state.talk.context;
  if (answer === 'wrong') return pending ? dropNumber(state, heard) : takeBack(state, heard);
  if (!pending) return asked(state, heard, refusal(state));
  const advised = advise(state, pending.base);
  if (advised) return takeAdvice(state, heard, advised);
  return takeEvent(talked(state, { type: 'answered' }), heard, {
    type: 'reading',
    value: pending.base,
  });
}

/** Said and kept; the walk stays where it is. */
function takeAdvice(state: RunState, heard: Heard, { line, why }: Advised): RunStep {
  const next = talked(state, { type: 'answered' });
  return asked({ ...next, told: { why }, lastLine: line }, heard, line);
}

function dropNumber(state: RunState, heard: Heard): RunStep {
  return asked(talked(state, { type: 'answered' }), heard, saysOf(state)('saySizeAgain'));
}

/** "Wrong" takes back the last accepted word. Where something may turn, it holds instead. */
function takeBack(state: RunState, heard: Heard): RunStep {
  const { undo } = state;
  if (!undo) return asked(state, heard, saysOf(state)('nothingBack'));
  const entry = entryOf(state, heard, { type: 'undo' }, 'moved');
  const line = announceUndo(state, undo);
  const kept = { ...state, ...undo, question: null };
  const next = { ...kept, undo: null, seq: state.seq + 1, lastLine: line };
  return {
    state: next,
    effects: [{ kind: 'append', entry: { ...entry, said: line } }, ...speak(line)],
  };
}

/** Seen with the numbers that hold again. */
function announceUndo(state: RunState, undo: NonNullable<RunState['undo']>): string {
  return announce(
    undo.job,
    undo.job === state.job ? state.snapshot : undo.snapshot,
    undo.snapshot,
    undefined,
    state.pace,
  );
}

function takeNumber(
  state: RunState,
  heard: Heard,
  meant: Extract<Understood, { kind: 'number' }>,
  list: BenchList,
): RunStep {
  const { number } = list;
  if (!number) return asked(state, heard, refusal(state));
  const understood = talked(state, { type: 'understood' });
  const base = baseOf(meant.value, number);
  if (!meant.fits && !accepts(state.snapshot, { type: 'reading', value: base })) {
    const dropped = talked(understood, { type: 'answered' });
    return asked(
      { ...dropped, ...toldOfReading(state, 'possible:most') },
      heard,
      outOfRange(meant.value, number, state.job.flow.language),
    );
  }
  const { unit, decimals, expected } = number;
  const pending: PendingNumber = { value: meant.value, unit, decimals, base, heard: heard.text };
  const far = expected !== undefined && isFar(meant.value, expected, decimals);
  const read = talked(understood, { type: 'number', pending, far });
  const next = far ? { ...read, ...toldOfReading(state, 'expected') } : read;
  const { language } = state.job.flow;
  const line = far ? questionFar(pending, expected, language) : readBack(pending, language);
  return asked(next, heard, line);
}

/** "Why that" after a number was questioned or refused is about what it was held against. */
function toldOfReading({ job, snapshot }: RunState, id: string): Pick<RunState, 'told'> {
  const figure = readingFigures(job, snapshot).find((one) => one.id === id);
  return figure ? { told: { why: whyThat(figure, job.flow.language) } } : {};
}

function toldOfRefusal(state: RunState, line: string, source: string | undefined): RunState {
  if (source === undefined) return state;
  return { ...state, told: { why: `${line} ${saysOf(state)('source', { source })}` } };
}

function takeEvent(state: RunState, heard: Heard, event: FlowEvent): RunStep {
  if (!accepts(state.snapshot, event)) return refused(state, heard, refusal(state));
  const snapshot = stepJob(state.job, state.snapshot, event);
  const reading = keptReading(state.job, state.snapshot, event, heard.at);
  const drill = event.type === 'stop' ? `${state.job.flow.kind.prompts.drill} ` : '';
  const { explained, question, ...move } = tell(state, snapshot, reading);
  const drift = driftNow(state, reading);
  const line = joinLines([drift?.line ?? '', drill + move.line]);
  const heardAs = entryOf(state, heard, { ...event }, 'moved');
  // At one's own pace nothing is said while a gate is only partly answered: the cue tells that it was heard.
  const entry = line === '' ? heardAs : { ...heardAs, said: line };
  const readings = reading ? [...state.readings, reading] : state.readings;
  const { told: _over, lit: _dark, ...answered } = talked(state, { type: 'answered' });
  const next: RunState = {
    ...answered,
    snapshot,
    explained,
    question,
    seq: state.seq + 1,
    readings,
    cutShows: cutShows(state, snapshot),
    undo: mayUndo(state, snapshot) ? before(state) : null,
    lastLine: line === '' ? state.lastLine : line,
    ...(drift ? { told: { why: drift.why } } : {}),
  };
  return {
    state: next,
    effects: [
      { kind: 'append', entry },
      ...ending(next, heard.at),
      { kind: 'cue', cue: event.type === 'stop' ? 'stop' : 'heard' },
      ...(line === '' ? [] : speak(line)),
    ],
  };
}

/** Beliefs about what turns are never taken back by a word: they are asked for again in a hold. */
function mayUndo(state: RunState, after: RunState['snapshot']): boolean {
  const quiet = (snapshot: RunState['snapshot']) =>
    snapshot.status === 'active' && !snapshot.hasTag('turning') && !snapshot.hasTag('held');
  return quiet(state.snapshot) && quiet(after);
}

function ending(state: RunState, at: number): readonly Effect[] {
  if (positionOf(state.snapshot).phase !== 'end') return [];
  return [{ kind: 'finish', status: 'finished', endedAt: at, readings: state.readings }];
}

function bareYes(state: RunState, heard: Heard): RunStep {
  const waiting = state.talk.context.pending;
  if (waiting && answerState(state.talk) === 'readBack') {
    return takeAnswer(talked(state, { type: 'understood' }), heard, 'correct');
  }
  return refused(state, heard, waiting ? sayKeep(state) : nameTheState(state));
}

/** Asks again, twice; then the keys are offered and it stays silent until something is understood. */
function miss(
  state: RunState,
  heard: Heard,
  meant: { readonly kind: 'nothing'; readonly words: number },
): RunStep {
  if (meant.words === 0 || meant.words > longestMiss) return { state, effects: [] };
  if (isTroubleWord(state, heard.text)) return refused(state, heard, troubleReply(state));
  if (isMachineWord(state, heard.text)) return refused(state, heard, refusal(state));
  const next = talked(state, { type: 'missed' });
  const { misses } = next.talk.context;
  if (state.talk.context.misses > askAgainLimit) return { state: next, effects: [] };
  const line = saysOf(state)(misses <= askAgainLimit ? 'sayAgain' : 'cannotHear');
  const entry = { ...entryOf(state, heard, null, 'unclear'), said: line };
  return {
    state: { ...next, seq: next.seq + 1 },
    effects: [{ kind: 'append', entry }, { kind: 'cue', cue: 'unclear' }, ...speak(line)],
  };
}
