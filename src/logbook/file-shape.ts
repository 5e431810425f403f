/** The file that holds everything of a logbook, version 2; version 1 held runs alone, each with its texts. */

import { z } from 'zod';
import type { KeptReading, RunEntry, RunHead, RunSource } from '../bench/ports.ts';
import type { SayKeeping } from './fault.ts';
import { issueText } from './issue-text.ts';
import { PHOTO_MOST_BYTES, photoHead } from './photo-shape.ts';
import { keptReading, runEntry, runHead, runSource } from './rows.ts';

/** A run without its texts: those stand once in the file for all the runs that share them. */
export interface FiledRun {
  readonly head: RunHead;
  readonly entries: readonly RunEntry[];
  readonly readings: readonly KeptReading[];
}

const runParts = {
  head: runHead,
  entries: z.array(runEntry).readonly(),
  readings: z.array(keptReading).readonly(),
};

const filedRun: z.ZodType<FiledRun> = z.strictObject(runParts);

const filedPhoto = z.strictObject({
  ...photoHead,
  /** The bytes in base64 (RFC 4648). */
  data: z.base64().max(Math.ceil(PHOTO_MOST_BYTES / 3) * 4),
});

const filedValue = z.strictObject({ key: z.string().min(1).max(200), value: z.json() });

export const logbookFileShape = z.strictObject({
  followrest: z.literal('logbook'),
  version: z.literal(2),
  /** Flow, machine kind and machine card as they were, each once. */
  sources: z.array(runSource),
  runs: z.array(filedRun),
  /** Operators, machine cards, settings and the like; no passphrase. */
  kept: z.array(filedValue),
  photos: z.array(filedPhoto),
});

export type LogbookFile = z.infer<typeof logbookFileShape>;

const firstFileShape = z.strictObject({
  followrest: z.literal('logbook'),
  version: z.literal(1),
  runs: z.array(z.strictObject({ ...runParts, source: runSource })),
});

const either = z.discriminatedUnion('version', [logbookFileShape, firstFileShape]);

/** What is wrong with a file that was refused: where, from its root, and what. */
export interface ImportFault {
  readonly path: string;
  readonly message: string;
}

export type FileRead =
  | { readonly ok: true; readonly file: LogbookFile }
  | { readonly ok: false; readonly faults: readonly ImportFault[] };

/** Longer texts do not fit into one string of some browsers. */
const MAX_TEXT = 256 * 1024 * 1024;
const MAX_FAULTS = 20;

/** Reads a file of any version as one of the present version. */
export function readLogbookFile(text: string, say: SayKeeping): FileRead {
  if (text.length > MAX_TEXT) return refuse('', say('tooLong', { n: MAX_TEXT }));
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    return refuse(
      '',
      say('noJson', { why: error instanceof Error ? error.message : String(error) }),
    );
  }
  const parsed = either.safeParse(data);
  if (!parsed.success) {
    const { issues } = parsed.error;
    return {
      ok: false,
      faults: issues
        .slice(0, MAX_FAULTS)
        .map((issue) => ({ path: issue.path.join('.'), message: issueText(issue, say) })),
    };
  }
  const file = parsed.data.version === 1 ? fromFirst(parsed.data.runs) : parsed.data;
  const faults = faultsIn(file, say);
  return faults.length > 0
    ? { ok: false, faults: faults.slice(0, MAX_FAULTS) }
    : { ok: true, file };
}

function refuse(path: string, message: string): FileRead {
  return { ok: false, faults: [{ path, message }] };
}

function fromFirst(runs: readonly (FiledRun & { readonly source: RunSource })[]): LogbookFile {
  return {
    followrest: 'logbook',
    version: 2,
    sources: [...new Map(runs.map(({ source }) => [JSON.stringify(source), source])).values()],
    runs: runs.map(({ head, entries, readings }) => ({ head, entries, readings })),
    kept: [],
    photos: [],
  };
}

/** What the shape alone cannot tell: how the parts of the file belong together. */
function faultsIn(
  { sources, runs, kept, photos }: LogbookFile,
  say: SayKeeping,
): readonly ImportFault[] {
  const twice = (list: string, name: string, keys: readonly string[]) =>
    placesTwice(list, name, keys).map((path) => ({ path, message: say('twice') }));
  const sourceKeys = new Set(sources.map(({ key }) => key));
  const runIds = new Set(runs.map(({ head }) => head.id));
  return [
    ...twice(
      'sources',
      'key',
      sources.map(({ key }) => key),
    ),
    ...twice(
      'runs',
      'head.id',
      runs.map(({ head }) => head.id),
    ),
    ...twice(
      'kept',
      'key',
      kept.map(({ key }) => key),
    ),
    ...twice(
      'photos',
      'id',
      photos.map(({ id }) => id),
    ),
    ...runs.flatMap((run, place) => faultsOfRun(run, `runs.${place}`, sourceKeys, say)),
    ...photos.flatMap(({ runId }, place) =>
      runIds.has(runId) ? [] : [{ path: `photos.${place}.runId`, message: say('noRun') }],
    ),
  ];
}

function faultsOfRun(
  { head, entries }: FiledRun,
  path: string,
  sourceKeys: ReadonlySet<string>,
  say: SayKeeping,
): readonly ImportFault[] {
  return [
    ...(sourceKeys.has(head.sourceKey)
      ? []
      : [{ path: `${path}.head.sourceKey`, message: say('noSource') }]),
    ...entries.flatMap(({ runId, seq }, place) => [
      ...(runId === head.id
        ? []
        : [{ path: `${path}.entries.${place}.runId`, message: say('otherRun') }]),
      ...(seq === place
        ? []
        : [{ path: `${path}.entries.${place}.seq`, message: say('mustBe', { place }) }]),
    ]),
  ];
}

function placesTwice(list: string, name: string, keys: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  return keys.flatMap((key, place) => {
    const again = seen.has(key);
    seen.add(key);
    return again ? [`${list}.${place}.${name}`] : [];
  });
}
