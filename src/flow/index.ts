/**
 * Reads flows, machine kinds and machine cards, and turns a flow into one statechart with its words, figures and verdicts.
 * Never speaks, stores, waits, or decides what the world does: it is a pure function of what was said.
 */

export { type Adjusted, type Adjustment, adjustJob, feedWorking, speedWorking } from './adjust.ts';
export { askedFacts, type FactAnswer, releaseAwaited, reportable } from './asked.ts';
export { type Card, cardFields, readCard } from './card.ts';
export { cardForRule } from './card-for-rule.ts';
export { type CardFile, cardShape } from './card-shape.ts';
export {
  type AnswerId,
  type Ask,
  askIds,
  type CommandId,
  commandPhrases,
  commandSaid,
  commandWord,
  commandWords,
  paceIds,
} from './command-words.ts';
export { compileJob, type FlowMachine, type Job, type JobResult } from './compile.ts';
export { type Condition, conditionShape, type SpeedLimit } from './condition-shape.ts';
export { constantInBase } from './constant.ts';
export { dialOf } from './dial-of.ts';
export { formatOf, type Shown, shownAs, shownText } from './display.ts';
export {
  type Facts,
  type FlowContext,
  type FlowEvent,
  type PassState,
  unknownState,
} from './events.ts';
export { isLoss, isMet, missingFacts, stateOf } from './facts.ts';
export { type Fault, faultMessage, faultText, faultTextIn, type Path, pathText } from './fault.ts';
export {
  type Behind,
  behindOf,
  type FigureWorld,
  type Given,
  type ReadingsHeld,
} from './figure-behind.ts';
export {
  type Figure,
  figureOf,
  figuresNow,
  inputFigures,
  limitFigures,
  passFigures,
  workingFigures,
} from './figures.ts';
export {
  type CheckQuestion,
  type FlowFile,
  type FlowInput,
  flowShape,
  type Reading,
  type Step,
  type StepOf,
} from './flow-shape.ts';
export { judgedFigure } from './judged-figure.ts';
export {
  type Fact,
  type FactState,
  type FaultWalk,
  type Hazard,
  kindShape,
  type MachineKind,
  type WalkItem,
} from './kind-shape.ts';
export { materialShape, readMaterial } from './material-shape.ts';
export {
  defaultInputs,
  type JobInputs,
  type Numbers,
  type Readings,
  type Running,
  workOut,
} from './numbers.ts';
export { withOwnMaterials } from './own-materials.ts';
export { askedTogether, type Pace, paces } from './pace.ts';
export {
  type BlockFeature,
  type FileBlock,
  type FileTurned,
  isBlock,
  type PieceFeature,
  type SizeKey,
  sizesOf,
  stockSizesOf,
  type TurnedFeature,
} from './piece-shape.ts';
export {
  accepts,
  beginJob,
  type FlowSnapshot,
  type Phase,
  type Position,
  planAt,
  positionOf,
  stepJob,
} from './position.ts';
export { type FileResult, readFlowFile, readFlowValue } from './read-file.ts';
export { readingFigures } from './reading-figures.ts';
export { readingsBehind } from './readings-behind.ts';
export { releaseFact } from './release.ts';
export { releaseFirst } from './release-first.ts';
export { type Flow, type FlowResult, readFlow, resolveFlow } from './resolve.ts';
export { readKind } from './resolve-kind.ts';

export { type SaidItem, type SaidList, type SaidNumber, saidList } from './said-list.ts';
export { speedHeard, speedSpoken, speedUnit } from './speed-told.ts';
export { alwaysAfter, endStep, type StepGraph } from './step-graph.ts';
export type { StepPlan } from './step-plan.ts';
export { type Translation, textsOfFile, textsShape, translateFile } from './translate.ts';
export { judge, type Limits, limitsOf, plausibleRange, type Verdict } from './verdict.ts';
export { fill, type GateLine, joined, type Line, type View, viewOf } from './view.ts';
export { walkNow } from './walk-view.ts';
export type { ValueRef, WantedFacts } from './words-shape.ts';
