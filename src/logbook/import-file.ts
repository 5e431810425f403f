/** Takes a logbook file in, whole or not at all. What is here already is never changed by it. */

import type { RunHead } from '../bench/ports.ts';
import { englishLanguage, keepingTexts, type Language, sayIn } from '../texts/index.ts';
import { fromBase64 } from './base64.ts';
import type { Database, Writing } from './database.ts';
import { LogbookFault, type SayKeeping } from './fault.ts';
import {
  type FiledRun,
  type ImportFault,
  type LogbookFile,
  readLogbookFile,
} from './file-shape.ts';
import { issueText } from './issue-text.ts';
import { putReadings, readingRows, rowsOf } from './ledger.ts';
import { PHOTOS_A_RUN, type Photo, photoRow } from './photos.ts';
import { putInDays } from './put-in-days.ts';
import { sameData } from './same-data.ts';

export type Imported =
  | {
      readonly ok: true;
      /** Runs taken in, and runs that were here, the same. */
      readonly added: number;
      readonly alreadyHere: number;
      /** Cards, operators and settings taken in; and the keys of those left, since there are others here. */
      readonly keptAdded: number;
      readonly keptLeft: readonly string[];
      readonly photosAdded: number;
    }
  /** Nothing was changed. */
  | { readonly ok: false; readonly faults: readonly ImportFault[] };

/** What is wrong with a value under a key, in a sentence; null when its owner can read it. */
export type JudgeKept = (key: string, value: unknown) => string | null;

const STORES = ['runs', 'entries', 'sources', 'readings', 'kept', 'days', 'photos'] as const;

export async function importInto(
  db: Database,
  text: string,
  judge: JudgeKept = () => null,
  language: Language = englishLanguage,
): Promise<Imported> {
  const say = sayIn(language, keepingTexts);
  const read = readLogbookFile(text, say);
  if (!read.ok) return read;
  const { file } = read;
  const photos = photosOf(file, say);
  const strange = [...photos.faults, ...strangeValues(file, judge)];
  if (strange.length > 0) return { ok: false, faults: strange };
  const faults: ImportFault[] = [];
  try {
    return await db.write([...STORES], (tx) => takeAll(tx, file, photos.rows, faults, say));
  } catch (error) {
    if (faults.length === 0) throw error;
    return { ok: false, faults };
  }
}

/** `faults` fills when something clashes; then the transaction is given up. It may run twice. */
async function takeAll(
  tx: Writing,
  file: LogbookFile,
  photos: readonly Photo[],
  faults: ImportFault[],
  say: SayKeeping,
): Promise<Imported> {
  faults.length = 0;
  const used = new Set(file.runs.map(({ head }) => head.sourceKey));
  for (const [place, source] of file.sources.entries()) {
    if (!used.has(source.key)) continue;
    const here = await tx.objectStore('sources').get(source.key);
    if (here === undefined) await tx.objectStore('sources').put(source);
    else if (!sameData(here, source)) faults.push(clash(`sources.${place}`, say));
  }
  const added: RunHead[] = [];
  for (const [place, run] of file.runs.entries()) {
    const outcome = await addRun(tx, run);
    if (outcome === 'clashes') faults.push(clash(`runs.${place}`, say));
    if (outcome === 'added') added.push(run.head);
  }
  const photosAdded = await addPhotos(tx, photos, faults, say);
  if (faults.length > 0) throw new LogbookFault('taken', (told) => told('clashes'));
  await putInDays(tx, added);
  const keptLeft = await addKept(tx, file);
  return {
    ok: true,
    added: added.length,
    alreadyHere: file.runs.length - added.length,
    keptAdded: file.kept.length - keptLeft.left.length - keptLeft.same,
    keptLeft: keptLeft.left,
    photosAdded,
  };
}

type Outcome = 'added' | 'already here' | 'clashes';

async function addRun(tx: Writing, run: FiledRun): Promise<Outcome> {
  const { head, entries, readings } = run;
  if ((await tx.objectStore('runs').getKey(head.id)) !== undefined) {
    return (await isHere(tx, run)) ? 'already here' : 'clashes';
  }
  await tx.objectStore('runs').add(head);
  for (const entry of entries) await tx.objectStore('entries').put(entry);
  await putReadings(tx, head.id, readings);
  return 'added';
}

async function isHere(tx: Writing, run: FiledRun): Promise<boolean> {
  const { id } = run.head;
  const head: unknown = await tx.objectStore('runs').get(id);
  const entries = await tx.objectStore('entries').getAll(rowsOf(id));
  const readings = await tx.objectStore('readings').getAll(rowsOf(id));
  return (
    sameData(head, run.head) &&
    sameData(entries, run.entries) &&
    sameData(readings, readingRows(id, run.readings))
  );
}

/** A photo that was taken away here comes back with the file: the file is what was wanted. */
async function addPhotos(
  tx: Writing,
  photos: readonly Photo[],
  faults: ImportFault[],
  say: SayKeeping,
): Promise<number> {
  const store = tx.objectStore('photos');
  let added = 0;
  for (const [place, photo] of photos.entries()) {
    const here: unknown = await store.get(photo.id);
    if (here === undefined) {
      await store.add(photo);
      added += 1;
    } else if (!samePhoto(photoRow.safeParse(here).data, photo)) {
      faults.push(clash(`photos.${place}`, say));
    }
  }
  return added;
}

function samePhoto(here: Photo | undefined, photo: Photo): boolean {
  if (!here) return false;
  const { bytes, ...head } = here;
  const { bytes: others, ...other } = photo;
  return (
    sameData(head, other) &&
    bytes.length === others.length &&
    bytes.every((byte, at) => byte === others[at])
  );
}

/** Settings, cards and operators of this device stay as they are. */
async function addKept(
  tx: Writing,
  { kept }: LogbookFile,
): Promise<{ readonly left: readonly string[]; readonly same: number }> {
  const store = tx.objectStore('kept');
  const left: string[] = [];
  let same = 0;
  for (const row of kept) {
    const here: unknown = await store.get(row.key);
    if (here === undefined) await store.put(row);
    else if (sameData(here, row)) same += 1;
    else left.push(row.key);
  }
  return { left, same };
}

function photosOf(
  { photos }: LogbookFile,
  say: SayKeeping,
): {
  readonly rows: readonly Photo[];
  readonly faults: readonly ImportFault[];
} {
  const faults: ImportFault[] = [];
  const counts = new Map<string, number>();
  const rows = photos.flatMap(({ data, ...head }, place) => {
    const parsed = photoRow.safeParse({ ...head, bytes: fromBase64(data) });
    const count = (counts.get(head.runId) ?? 0) + 1;
    counts.set(head.runId, count);
    if (count > PHOTOS_A_RUN) {
      faults.push({
        path: `photos.${place}`,
        message: say('onePhotoMore', { n: PHOTOS_A_RUN }),
      });
    }
    if (parsed.success) return [parsed.data];
    const [issue] = parsed.error.issues;
    const message = issue ? issueText(issue, say) : say('notSo');
    faults.push({ path: `photos.${place}.data`, message });
    return [];
  });
  return { rows, faults };
}

function strangeValues({ kept }: LogbookFile, judge: JudgeKept): readonly ImportFault[] {
  return kept.flatMap(({ key, value }, place) => {
    const message = judge(key, value);
    return message === null ? [] : [{ path: `kept.${place}`, message }];
  });
}

function clash(path: string, say: SayKeeping): ImportFault {
  return { path, message: say('differs') };
}
