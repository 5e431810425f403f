/** Finds and reads the shipped flows, machine kinds and machine cards. */

import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  type Card,
  type Fault,
  type Flow,
  type MachineKind,
  readCard,
  readFlow,
  readKind,
} from '../flow/index.ts';

export const repository = join(dirname(fileURLToPath(import.meta.url)), '../..');
const flowFolder = join(repository, 'flows');

/** Paths of all shipped flows, from the repository's root, by name. */
export function shippedFlows(): readonly string[] {
  return jsonIn(flowFolder).map((path) => relative(repository, path));
}

/** All shipped machine kinds by id. Throws with their faults: a broken kind is our own mistake. */
export function shippedKinds(): ReadonlyMap<string, MachineKind> {
  const kinds = jsonIn(join(flowFolder, 'kinds')).map((path) => {
    const read = readKind(relative(repository, path), readFileSync(path, 'utf8'));
    if (!read.ok) throw new Error(read.faults.map((fault) => fault.message).join('\n'));
    return [read.value.id, read.value] as const;
  });
  return new Map(kinds);
}

/** All shipped machine cards. Throws with their faults. */
export function shippedCards(): readonly Card[] {
  return jsonIn(join(flowFolder, 'machines')).map((path) => {
    const read = readCard(relative(repository, path), readFileSync(path, 'utf8'));
    if (!read.ok) throw new Error(read.faults.map((fault) => fault.message).join('\n'));
    return read.value;
  });
}

export type FileRead =
  | { readonly ok: true; readonly path: string; readonly flow: Flow }
  | { readonly ok: false; readonly path: string; readonly faults: readonly Fault[] };

/** Reads one flow file; one that cannot be opened is a fault like any other. */
export function readFlowAt(path: string, kinds: ReadonlyMap<string, MachineKind>): FileRead {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    const message = `It cannot be read: ${error instanceof Error ? error.message : error}`;
    return { ok: false, path, faults: [{ file: path, path: '$', line: 0, column: 0, message }] };
  }
  const read = readFlow(path, text, kinds);
  return read.ok ? { ok: true, path, flow: read.flow } : { ok: false, path, faults: read.faults };
}

function jsonIn(folder: string): readonly string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => join(folder, name));
}
