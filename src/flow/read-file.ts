/** Reads one JSON file against its shape: the value, or every fault at once with its place. */

import type { z } from 'zod';
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
  return { ok: false, faults: shapeFaults(source, parsed.error) };
}

/** Said first and alone: with the wrong kind of file, every other fault is noise. */
function wrongKindOfFile(source: Source, what: string): Fault | undefined {
  const value = source.value;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return source.fault([], `Expected an object with "followrest": "${what}".`);
  }
  const { followrest, version } = value as { followrest?: unknown; version?: unknown };
  const place = (key: string): Path => (Object.hasOwn(value, key) ? [key] : []);
  if (followrest !== what) {
    const came = followrest === undefined ? 'no such key' : JSON.stringify(followrest);
    return source.fault(place('followrest'), `Expected "followrest": "${what}", found ${came}.`);
  }
  if (version !== 1) {
    const came = version === undefined ? 'none' : JSON.stringify(version);
    return source.fault(
      place('version'),
      `Expected "version": 1, found ${came}. This tool reads version 1 only.`,
    );
  }
  return undefined;
}
