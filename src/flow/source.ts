/** Reads JSON text so that every place in it can be pointed at by line and column. */

import { type AnyNode, type ObjectNode, parse } from '@humanwhocodes/momoa';
import { type Fault, type Path, pathText } from './fault.ts';

export const largestFile = 1024 * 1024;
export const deepestNesting = 32;
const forbiddenKeys = new Set(['__proto__', 'constructor', 'prototype']);

/** A value read from text, with a finger for every path in it. */
export interface Source {
  readonly file: string;
  readonly value: unknown;
  /** A fault at this path, or at the nearest place above it that the text has. */
  fault(path: Path, message: string): Fault;
}

export type SourceResult =
  | { readonly ok: true; readonly source: Source }
  | { readonly ok: false; readonly faults: readonly Fault[] };

interface Spot {
  readonly line: number;
  readonly column: number;
}

/** Parses `text`; refuses what is too large, too deep, doubled or dangerous. Never throws. */
export function readSource(file: string, text: string): SourceResult {
  if (text.length > largestFile) {
    return refused(
      file,
      `The file has ${text.length} characters; at most ${largestFile} are read.`,
    );
  }
  const deep = tooDeepAt(text);
  if (deep) return refused(file, `Nested deeper than ${deepestNesting} levels.`, deep);
  const tree = parseTree(file, text);
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

function finger(file: string, spots: ReadonlyMap<string, Spot>): Source['fault'] {
  return (path, message) => {
    const spot = nearestSpot(spots, path);
    return { file, path: pathText(path), line: spot.line, column: spot.column, message };
  };
}

function nearestSpot(spots: ReadonlyMap<string, Spot>, path: Path): Spot {
  for (let length = path.length; length >= 0; length--) {
    const spot = spots.get(pathText(path.slice(0, length)));
    if (spot) return spot;
  }
  return { line: 0, column: 0 };
}

function refused(file: string, message: string, spot: Spot = { line: 1, column: 1 }): SourceResult {
  return { ok: false, faults: [{ file, path: '$', ...spot, message }] };
}

/** Counted before parsing, so that a bomb of brackets never reaches a recursive parser. */
function tooDeepAt(text: string): Spot | undefined {
  let depth = 0;
  let line = 1;
  let lineStart = 0;
  let inText = false;
  for (let index = 0; index < text.length; index++) {
    const sign = text[index];
    if (sign === '\n') {
      line++;
      lineStart = index + 1;
    } else if (inText) {
      if (sign === '\\') index++;
      else if (sign === '"') inText = false;
    } else if (sign === '"') inText = true;
    else if (sign === '{' || sign === '[') depth++;
    else if (sign === '}' || sign === ']') depth--;
    if (depth > deepestNesting) return { line, column: index - lineStart + 1 };
  }
  return undefined;
}

function parseTree(file: string, text: string): { body: AnyNode } | { faults: Fault[] } {
  try {
    return { body: parse(text, { mode: 'json', ranges: false }).body };
  } catch (error) {
    const spot = error as { line?: number; column?: number; message?: string };
    const what = String(spot.message ?? error).replace(/\s*\(\d+:\d+\)\s*$/, '');
    const message = `This is not JSON: ${what.replace(/\.$/, '')}. Mend the text there and read it again.`;
    return {
      faults: [{ file, path: '$', line: spot.line ?? 1, column: spot.column ?? 1, message }],
    };
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
      walk.faults.push({ file: walk.file, path: pathText(keyPath), line, column, message });
      continue;
    }
    walk.spots.set(pathText(keyPath), member.name.loc.start);
    result[key] = plain(member.value, keyPath, walk);
  }
  return result;
}

function keyFault(key: string, seen: Record<string, unknown>): string | undefined {
  if (forbiddenKeys.has(key)) return `The key "${key}" is never allowed. Give it another name.`;
  if (Object.hasOwn(seen, key)) return `The key "${key}" stands twice here. Keep one of them.`;
  return undefined;
}
