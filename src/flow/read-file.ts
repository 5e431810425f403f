/** Reads one JSON file against its shape: the value, or every fault at once with its place. */

import type { z } from 'zod';
import { type Worded, worded } from '../texts/index.ts';
import { type CardFile, cardShape } from './card-shape.ts';
import type { Fault, Path } from './fault.ts';
import { type FlowFile, flowShape } from './flow-shape.ts';
import { kindShape, type MachineKind } from './kind-shape.ts';
import { shapeFaults } from './shape-fault.ts';
import { readSource, type Source, valueSource } from './source.ts';

export type FileResult<T> =
  | { readonly ok: true; readonly value: T; readonly source: Source }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** A flow file, its keys and value kinds checked; meaning is checked by resolveFlow. */
export function readFlowFile(file: string, text: string): FileResult<FlowFile> {
  return readFile(file, text, flowShape, 'flow');
}

export function readKindFile(file: string, text: string): FileResult<MachineKind> {
  return readFile(file, text, kindShape, 'machine-kind');
}

export function readCardFile(file: string, text: string): FileResult<CardFile> {
  return readFile(file, text, cardShape, 'machine-card');
}

/** A flow that never was text, such as one made by a test or the Desk. */
export function readFlowValue(file: string, value: unknown): FileResult<FlowFile> {
  return readShape(valueSource(file, value), flowShape, 'flow');
}

function readFile<T>(file: string, text: string, shape: z.ZodType<T>, what: string): FileResult<T> {
  const read = readSource(file, text);
  return read.ok ? readShape(read.source, shape, what) : read;
}

function readShape<T>(source: Source, shape: z.ZodType<T>, what: string): FileResult<T> {
  const wrong = wrongKindOfFile(source, what);
  if (wrong) return { ok: false, faults: [wrong] };
  const parsed = shape.safeParse(source.value);
  if (parsed.success) return { ok: true, value: parsed.data, source };
  return { ok: false, faults: shapeFaults(source, shape, parsed.error) };
}

const kindsOfFile = ['flow', 'machine-kind', 'machine-card'];

/** Said first and alone: with the wrong kind of file, every other fault is noise. */
function wrongKindOfFile(source: Source, what: string): Fault | undefined {
  const value = source.value;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return source.fault(
      [],
      worded`The file must be one object: ${`{ "followrest": "${what}", … }`}.`,
    );
  }
  const { followrest, version } = value as { followrest?: unknown; version?: unknown };
  const place = (key: string): Path => (Object.hasOwn(value, key) ? [key] : []);
  if (followrest !== what) return source.fault(place('followrest'), otherKind(followrest, what));
  if (version === 1) return undefined;
  return source.fault(
    place('version'),
    version === undefined
      ? 'The version is missing. Add "version": 1 under "followrest".'
      : worded`Version ${JSON.stringify(version)} cannot be read: this tool reads "version": 1.`,
  );
}

function otherKind(came: unknown, what: string): Worded {
  if (came === undefined) {
    return worded`What the file is must be said first. Add "followrest": "${what}" at the top.`;
  }
  return typeof came === 'string' && kindsOfFile.includes(came)
    ? worded`This file is a ${came}; a ${what} is wanted here. Choose another file.`
    : worded`Expected "followrest": "${what}", found ${JSON.stringify(came)}.`;
}
