/** Reads JSON text so that every place in it can be pointed at by line and column. */

import { type AnyNode, type ObjectNode, parse } from '@humanwhocodes/momoa';
import { type Worded, worded } from '../texts/index.ts';
import { type Fault, type Path, pathText, saying } from './fault.ts';
import { jsonSentence, lookAtBrackets, openSentence, type Spot } from './json-fault.ts';

export const largestFile = 1024 * 1024;
export const deepestNesting = 32;
const forbiddenKeys = new Set(['__proto__', 'constructor', 'prototype']);

/** A value read from text, with a finger for every path in it. */
export interface Source {
  readonly file: string;
  readonly value: unknown;
  /** A fault at this path, or at the nearest place above it that the text has. */
  fault(path: Path, message: Worded): Fault;
}

export type SourceResult =
  | { readonly ok: true; readonly source: Source }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Parses `text`; refuses what is too large, too deep, doubled or dangerous. Never throws. */
export function readSource(file: string, text: string): SourceResult {
  // Editors of one system put an invisible mark before the first character.
  const whole = text.replace(/^\uFEFF/, '');
  if (whole.length > largestFile) {
    return refused(
      file,
      worded`The file has ${whole.length} characters; at most ${largestFile} are read. Split the job into two flows.`,
    );
  }
  if (whole.trim() === '') return refused(file, 'The file is empty.');
  const tree = parseTree(file, whole);
  if ('faults' in tree) return { ok: false, faults: tree.faults };
  const spots = new Map<string, Spot>();
  const faults: Fault[] = [];
  const value = plain(tree.body, [], { file, spots, faults });
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, source: { file, value, fault: finger(file, spots) } };
}

/** A source for a value that never was text: faults carry the path, and 0 for line and column. */
export function valueSource(file: string, value: unknown): Source {
  return { file, value, fault: finger(file, new Map()) };
}

/** Faults in the order of the text they point into. */
export function inOrder(faults: readonly Fault[]): readonly Fault[] {
  return [...faults].sort((a, b) => a.line - b.line || a.column - b.column);
}

function finger(file: string, spots: ReadonlyMap<string, Spot>): Source['fault'] {
  return (path, message) => {
    const spot = nearestSpot(spots, path);
    return { file, path: pathText(path), line: spot.line, column: spot.column, ...saying(message) };
  };
}

function nearestSpot(spots: ReadonlyMap<string, Spot>, path: Path): Spot {
  for (let length = path.length; length >= 0; length--) {
    const spot = spots.get(pathText(path.slice(0, length)));
    if (spot) return spot;
  }
  return { line: 0, column: 0 };
}

function refused(file: string, message: Worded, spot: Spot = { line: 1, column: 1 }): SourceResult {
  return { ok: false, faults: [{ file, path: '$', ...spot, ...saying(message) }] };
}

function parseTree(file: string, text: string): { body: AnyNode } | { faults: Fault[] } {
  const fault = (spot: Spot, message: Worded) => ({
    faults: [{ file, path: '$', line: spot.line, column: spot.column, ...saying(message) }],
  });
  const brackets = lookAtBrackets(text, deepestNesting);
  if (brackets.kind === 'deep')
    return fault(
      brackets.spot,
      worded`Nested deeper than ${deepestNesting} levels. Make it flatter.`,
    );
  if (brackets.kind === 'newline') return fault(brackets.spot, openSentence('"'));
  try {
    return { body: parse(text, { mode: 'json', ranges: false }).body };
  } catch (error) {
    const { line = 1, column = 1, offset = 0 } = error as Partial<Spot> & { offset?: number };
    // The parser only knows where it stumbled; what was left open before is the better place.
    if (brackets.kind === 'open' && offset >= brackets.offset)
      return fault(brackets.spot, openSentence(brackets.sign));
    return fault({ line, column }, jsonSentence(text, offset));
  }
}

interface Walk {
  readonly file: string;
  readonly spots: Map<string, Spot>;
  readonly faults: Fault[];
}

function plain(node: AnyNode, path: Path, walk: Walk): unknown {
  if (!walk.spots.has(pathText(path))) walk.spots.set(pathText(path), node.loc.start);
  switch (node.type) {
    case 'Object':
      return plainObject(node, path, walk);
    case 'Array':
      return node.elements.map((element, index) => plain(element.value, [...path, index], walk));
    case 'String':
    case 'Number':
    case 'Boolean':
      return node.value;
    default:
      return null;
  }
}

function plainObject(node: ObjectNode, path: Path, walk: Walk): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  for (const member of node.members) {
    const key = member.name.type === 'String' ? member.name.value : member.name.name;
    const keyPath = [...path, key];
    const message = keyFault(key, result);
    if (message) {
      const { line, column } = member.name.loc.start;
      walk.faults.push({
        file: walk.file,
        path: pathText(keyPath),
        line,
        column,
        ...saying(message),
      });
      continue;
    }
    walk.spots.set(pathText(keyPath), member.name.loc.start);
    result[key] = plain(member.value, keyPath, walk);
  }
  return result;
}

function keyFault(key: string, seen: Record<string, unknown>): Worded | undefined {
  if (forbiddenKeys.has(key))
    return worded`The key "${key}" is never allowed. Give it another name.`;
  if (Object.hasOwn(seen, key))
    return worded`The key "${key}" stands twice here. Keep one of them.`;
  return undefined;
}
