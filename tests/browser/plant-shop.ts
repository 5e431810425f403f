/** What a forge yard has in its Logbook after some weeks: a batch, notes, a run that waits for a release, one in German. */

import { type KeptReading, type RunEntry, type RunState, saidNow } from '../../src/bench/index.ts';
import { releaseFirst, translateFile } from '../../src/flow/index.ts';
import { german } from '../../src/texts/de/index.ts';
import { sources } from '../bench/scripted.ts';
import { textOf } from '../flow/shipped.ts';
import * as words from './hinge-pin.ts';
import { entriesBySaying, fileOf, type Planted, type Texts } from './plant.ts';

const day = 86_400_000;
const since = Date.UTC(2026, 9, 5, 7, 30);

/** Shank diameters of five pieces, each a little larger: the tool wears. */
const shanks = [15.968, 15.971, 15.975, 15.979, 15.984];

export async function fileOfShop(): Promise<string> {
  return fileOf([...batch(), waits(), inGerman()]);
}

function batch(): readonly Planted[] {
  const end = entriesBySaying(words.wholeJob).get('end');
  const said = end?.entries ?? [];
  return shanks.map((shank, place) => {
    const startedAt = since + place * day;
    const head = { operator: 'Ruth', pace: 'familiar', startedAt } as const;
    const ended = { status: 'finished', endedAt: startedAt + 5_400_000 } as const;
    return {
      id: `pin-${place + 1}`,
      entries: [...said, noteAt(said.length)],
      head: place === 0 ? head : { ...head, batch: { id: 'pin-1', piece: place + 1 } },
      end: { ...ended, readings: [reading(shank, startedAt)] },
    };
  });
}

function noteAt(seq: number): RunEntry {
  const text = 'The half-nut lever is stiff; asked Emil to look at it before the next pin.';
  return {
    ...{ version: 1, runId: '', seq, at: 9_000, step: 'end', outcome: 'note' },
    heard: { text: `note ${text}`, from: 'speech', confidence: 0.8 },
    event: { type: 'note', text },
  };
}

function reading(value: number, at: number): KeptReading {
  const what = { step: 'inspect-shank', reading: 'pinDone', label: 'Shank diameter', unit: 'mm' };
  return { ...what, value, lower: 15.957, upper: 16, verdict: 'within', at };
}

function waits(): Planted {
  const texts = { ...sources(), flow: releaseFirst(sources().flow) };
  const entered = entriesBySaying([...words.protect, ...words.mount], texts).get('face');
  return { id: 'waits', entries: entered?.entries ?? [], texts };
}

/** At the entry of the first touch, behind all that comes before it. */
function inGerman(): Planted {
  const texts: Texts = {
    flow: translated('texts/de/gate-hinge-pin.json', sources().flow),
    kind: translated('texts/de/lathe.json', sources().kind),
    card: sources().card,
  };
  const entered = entriesBySaying(germanWord, texts, german).get('touch');
  const head = { language: 'de', operator: 'Ruth', pace: 'familiar', startedAt: since } as const;
  return { id: 'german', entries: entered?.entries ?? [], head, texts };
}

function translated(path: string, text: string): string {
  const made = translateFile(path, text, textOf(path));
  if (!made.ok) throw new Error(made.faults.map(({ message }) => message).join('\n'));
  return made.text;
}

/** What is said next by somebody who has no trouble. */
function germanWord(state: RunState): string {
  const { items, number } = saidNow(state);
  const answer = items.find(({ kind, answer: of }) => kind === 'fact' || of === 'correct');
  const choice = items.find(({ kind }) => kind === 'choice');
  const size = number && (number.expected ?? (number.min + number.max) / 2);
  const typed = size?.toFixed(number?.decimals ?? 0).replace('.', ',');
  return answer?.phrases[0] ?? typed ?? choice?.phrases[0] ?? 'weiter';
}
