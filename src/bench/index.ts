/**
 * Leads one job: takes what was heard, steps the chart, keeps the entry, and says what should be done next.
 * Never touches a device: everything it needs from the world goes through its ports.
 */

export {
  type Characteristic,
  characteristics,
  driftOf,
  type EarlierPieces,
  groupSize,
  groupsOf,
} from './batch.ts';
export { batchFigures } from './batch-figures.ts';
export { beginRun, comeBack, type ReplayResult, replayRun } from './begin-run.ts';
export { questionLine } from './check-question.ts';
export { type Drift, driftTold } from './drift-line.ts';
export { wordsToEnrol } from './enrol-words.ts';
export { giveUp } from './give-up.ts';
export { findPartCalled, findTerm, glossaryIn, type Term } from './glossary.ts';
export { interrupts } from './interrupt.ts';
export { listenFor } from './listen-for.ts';
export type { SpeechManner } from './manner-run.ts';
export { noteIn } from './note-run.ts';
export { type PaceWish, paceName } from './pace-run.ts';
export type * from './ports.ts';
export { releaseIn } from './release-run.ts';
export { presentLine } from './replies.ts';
export type { Effect, RunState, RunStep } from './run-state.ts';
export { type BenchItem, type BenchList, saidNow } from './said-now.ts';
export { type Notice, openSession, type Session, type SessionWorld } from './session.ts';
export { type SlateReply, type SlateResult, slateAnswer } from './slate-answer.ts';
export { slatePhrases } from './slate-phrases.ts';
export { type SlateCard, type SlateQuestion, slateQuestion } from './slate-question.ts';
export {
  beginSound,
  earOpen,
  type SoundEvent,
  type SoundSnapshot,
  soundChart,
  stepSound,
} from './sound-chart.ts';
export { type StartResult, startJob } from './start-job.ts';
export { hear, missed } from './step-run.ts';
export {
  answerState,
  beginTalk,
  stepTalk,
  type TalkEvent,
  type TalkSnapshot,
  talkChart,
} from './talk-chart.ts';
export { type Turn, turnOf } from './turn.ts';
export { viewNow } from './view-now.ts';
export { figureAsked } from './why-that.ts';
export { wordsBefore } from './words-before.ts';
