/** Checks that a machine kind hangs together: its roles, hazards and walks name facts it has. */

import { englishLanguage, type Language } from '../texts/index.ts';
import { phaseNames, settleItem } from './chart-arrows.ts';
import type { Condition } from './condition-shape.ts';
import { unknownState } from './events.ts';
import type { Fault, Path } from './fault.ts';
import type { MachineKind } from './kind-shape.ts';
import { listed, suggestion } from './nearest.ts';
import type { FileResult } from './read-file.ts';
import { readKindFile } from './read-file.ts';
import { checkAdvice } from './resolve-advice.ts';
import { checkKindPhrases } from './resolve-phrases.ts';
import type { Complain } from './resolve-values.ts';
import { inOrder } from './source.ts';

/** Moments every machine kind has: they follow from what a step does. */
export const commonMoments = [
  /** The person is told to start it, and may be doing so. */
  'start',
  /** From that instruction until the person has said that it stands still. */
  'turning',
  'cutting',
  /** Hands are near the work, the tool or the chuck. */
  'hands',
  'measuring',
  'end',
] as const;

/** Reads a machine kind and checks that its names meet. */
export function readKind(
  file: string,
  text: string,
  language: Language = englishLanguage,
): FileResult<MachineKind> {
  const read = readKindFile(file, text);
  if (!read.ok) return read;
  const faults: Fault[] = [];
  const complain: Complain = (path, message) => faults.push(read.source.fault(path, message));
  checkKind(read.value, language, complain);
  return faults.length > 0 ? { ok: false, faults: inOrder(faults) } : read;
}

export function checkKind(kind: MachineKind, language: Language, complain: Complain): void {
  checkKindPhrases(kind, language, complain);
  checkUnique(kind.facts, ['facts'], 'fact', complain);
  checkUnique(kind.hazards, ['hazards'], 'hazard', complain);
  checkUnique(kind.walks, ['walks'], 'walk', complain);
  checkUnique(kind.parts, ['parts'], 'part', complain);
  kind.facts.forEach((fact, index) => {
    checkUnique(fact.states, ['facts', index, 'states'], 'state', complain);
    fact.states.forEach(({ id }, at) => {
      if (id === unknownState)
        complain(
          ['facts', index, 'states', at, 'id'],
          `"${id}" is what a fact is before anybody has answered. Give the state another id.`,
        );
    });
    if (fact.part !== undefined) checkPart(fact.part, kind, ['facts', index, 'part'], complain);
  });
  for (const [role, { fact, ...states }] of Object.entries(kind.roles)) {
    if (!checkFact(fact, kind, ['roles', role, 'fact'], complain)) continue;
    for (const [key, state] of Object.entries(states)) {
      checkFactState(fact, String(state), kind, ['roles', role, key], complain);
    }
  }
  for (const [phase, part] of Object.entries(kind.phaseParts)) {
    if (part !== undefined) checkPart(part, kind, ['phaseParts', phase], complain);
  }
  kind.hazards.forEach((hazard, index) => {
    checkCondition(hazard.never, kind, ['hazards', index, 'never'], complain);
  });
  kind.walks.forEach((walk, at) => {
    checkReserved(walk.id, phaseNames, ['walks', at, 'id'], complain);
    if ([...commonMoments, ...kind.moments].includes(walk.id))
      complain(
        ['walks', at, 'id'],
        `"${walk.id}" is a moment as well, and hazards could not tell them apart. Give it another id.`,
      );
    checkWanted(walk.begins, kind, ['walks', at, 'begins'], complain);
    checkUnique(walk.items, ['walks', at, 'items'], 'item', complain);
    walk.items.forEach((item, index) => {
      const path: Path = ['walks', at, 'items', index];
      checkReserved(item.id, [settleItem], [...path, 'id'], complain);
      checkWanted(item.needs, kind, [...path, 'needs'], complain);
      if (item.part !== undefined) checkPart(item.part, kind, [...path, 'part'], complain);
      if (item.advice) checkAdvice(item.advice, [...path, 'advice'], complain);
    });
  });
}

function checkReserved(id: string, taken: readonly string[], path: Path, complain: Complain): void {
  if (taken.includes(id))
    complain(path, `"${id}" is the name of a state inside every step. Give it another id.`);
}

export function checkUnique(
  list: readonly { readonly id: string }[],
  path: Path,
  what: string,
  complain: Complain,
): void {
  const seen = new Set<string>();
  list.forEach(({ id }, index) => {
    if (seen.has(id))
      complain(
        [...path, index, 'id'],
        `The ${what} "${id}" stands twice. Give one of them another id.`,
      );
    seen.add(id);
  });
}

export function checkWanted(
  wanted: Readonly<Record<string, string>>,
  kind: MachineKind,
  path: Path,
  complain: Complain,
): void {
  for (const [fact, state] of Object.entries(wanted)) {
    checkFactState(fact, state, kind, [...path, fact], complain);
  }
}

/** True when the machine kind has the fact; otherwise says so. */
export function checkFact(
  fact: string,
  kind: MachineKind,
  path: Path,
  complain: Complain,
): boolean {
  const facts = kind.facts.map((one) => one.id);
  if (facts.includes(fact)) return true;
  complain(
    path,
    `The ${kind.id} has no fact "${fact}".${suggestion(fact, facts)} It has: ${listed(facts, 24)}.`,
  );
  return false;
}

function checkFactState(
  factId: string,
  state: string,
  kind: MachineKind,
  path: Path,
  complain: Complain,
): void {
  if (!checkFact(factId, kind, path, complain)) return;
  const states = kind.facts.find((one) => one.id === factId)?.states.map((one) => one.id) ?? [];
  if (states.includes(state)) return;
  complain(
    path,
    `The fact "${factId}" is never "${state}".${suggestion(state, states)} It is: ${listed(states)}.`,
  );
}

export function checkPart(part: string, kind: MachineKind, path: Path, complain: Complain): void {
  const parts = kind.parts.map((one) => one.id);
  if (parts.includes(part)) return;
  complain(
    path,
    `The ${kind.id} has no part "${part}".${suggestion(part, parts)} It has: ${listed(parts, 30)}.`,
  );
}

export function checkMoment(
  moment: string,
  kind: MachineKind,
  path: Path,
  complain: Complain,
  more: readonly string[] = [],
): void {
  const moments = [...commonMoments, ...kind.moments, ...more];
  if (moments.includes(moment)) return;
  complain(
    path,
    `The ${kind.id} has no moment "${moment}".${suggestion(moment, moments)} It has: ${listed(moments)}.`,
  );
}

function checkCondition(
  condition: Condition,
  kind: MachineKind,
  path: Path,
  complain: Complain,
): void {
  if ('all' in condition) {
    condition.all.forEach((one, index) => {
      checkCondition(one, kind, [...path, 'all', index], complain);
    });
  } else if ('any' in condition) {
    condition.any.forEach((one, index) => {
      checkCondition(one, kind, [...path, 'any', index], complain);
    });
  } else if ('moment' in condition) {
    // That a trouble is named, and nothing yet done about it, is a moment too.
    const walks = kind.walks.map(({ id }) => id);
    checkMoment(condition.moment, kind, [...path, 'moment'], complain, walks);
  } else if ('asking' in condition) {
    checkFact(condition.asking, kind, [...path, 'asking'], complain);
  } else if ('fact' in condition) {
    const [key, state] = 'is' in condition ? ['is', condition.is] : ['not', condition.not];
    if (checkFact(condition.fact, kind, [...path, 'fact'], complain))
      checkFactState(condition.fact, state, kind, [...path, key], complain);
  }
}
