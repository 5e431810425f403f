/** Resolves a flow against its machine kind and the table of trade rules: all its faults at once, or a flow that can be compiled. */

import { englishLanguage, type Language } from '../texts/index.ts';
import type { Fault } from './fault.ts';
import type { FlowFile, Step } from './flow-shape.ts';
import type { MachineKind } from './kind-shape.ts';
import { listed, suggestion } from './nearest.ts';
import { type FileResult, readFlowFile } from './read-file.ts';
import { releaseNeeds, withRelease } from './release.ts';
import { checkPiece } from './resolve-piece.ts';
import { checkSteps, stepNeeds } from './resolve-steps.ts';
import { type Complain, checkInputs, checkWorkings } from './resolve-values.ts';
import { readingOf, type Scope, scopeOf } from './scope.ts';
import { inOrder, type Source } from './source.ts';
import { type StepGraph, stepGraph } from './step-graph.ts';
import type { WantedFacts } from './words-shape.ts';

/** A flow whose every name is known to mean something. */
export interface Flow {
  readonly file: FlowFile;
  /** What it is said and heard in; the texts of its files are in it already. */
  readonly language: Language;
  readonly kind: MachineKind;
  readonly scope: Scope;
  readonly graph: StepGraph;
  readonly steps: ReadonlyMap<string, Step>;
  /** Named gates and own needs of each step, put together. */
  readonly needs: ReadonlyMap<string, WantedFacts>;
}

export type FlowResult =
  | { readonly ok: true; readonly flow: Flow; readonly source: Source }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads and resolves a flow. `kinds` are the machine kinds there are, by id. */
export function readFlow(
  file: string,
  text: string,
  kinds: ReadonlyMap<string, MachineKind>,
  language: Language = englishLanguage,
): FlowResult {
  return resolveFlow(readFlowFile(file, text), kinds, language);
}

export function resolveFlow(
  read: FileResult<FlowFile>,
  kinds: ReadonlyMap<string, MachineKind>,
  language: Language = englishLanguage,
): FlowResult {
  if (!read.ok) return read;
  const { value: file, source } = read;
  const faults: Fault[] = [];
  const complain: Complain = (path, message) => faults.push(source.fault(path, message));
  const kind = kinds.get(file.machineKind);
  if (!kind) {
    const known = [...kinds.keys()];
    complain(
      ['machineKind'],
      `There is no machine kind "${file.machineKind}".${suggestion(file.machineKind, known)} There are: ${listed(known)}.`,
    );
    return { ok: false, faults };
  }
  const flow = makeFlow(file, kind, language);
  checkNames(file, complain);
  checkInputs(file, complain);
  checkWorkings(file, flow.scope, complain);
  checkSteps({ flow: file, kind, language, scope: flow.scope, graph: flow.graph, complain });
  checkPiece(file, flow.scope, complain);
  return faults.length > 0 ? { ok: false, faults: inOrder(faults) } : { ok: true, flow, source };
}

function makeFlow(file: FlowFile, kind: MachineKind, language: Language): Flow {
  return {
    file,
    language,
    kind: withRelease(kind, file, language),
    scope: scopeOf(file, kind.speedQuantity),
    graph: stepGraph(file.steps),
    steps: new Map(file.steps.map((step) => [step.id, step])),
    needs: new Map(
      file.steps.map((step) => [step.id, { ...stepNeeds(step, file), ...releaseNeeds(step) }]),
    ),
  };
}

/** Inputs, workings and readings share one set of names, since sentences use them alike. */
function checkNames(file: FlowFile, complain: Complain): void {
  const seen = new Set<string>();
  const claim = (id: string, path: readonly (string | number)[]) => {
    if (seen.has(id))
      complain(
        [...path, 'id'],
        `The name "${id}" stands twice among inputs, workings and readings. Give one of them another.`,
      );
    seen.add(id);
  };
  file.inputs.forEach(({ id }, index) => {
    claim(id, ['inputs', index]);
  });
  file.workings.forEach(({ id }, index) => {
    claim(id, ['workings', index]);
  });
  file.steps.forEach((step, index) => {
    const reading = readingOf(step);
    if (reading) claim(reading.id, ['steps', index, 'reading']);
  });
}
