/** What a proof says in German: each claim, each sentence of what is wrong, and the way that leads there. */

import { describe, expect, it } from 'vitest';
import {
  compileJob,
  type Job,
  type MachineKind,
  readFlowValue,
  readKind,
  resolveFlow,
  translateFile,
} from '../../src/flow/index.ts';
import { claimNamed, claimsOf, formatClaims, prove, toldAs } from '../../src/proof/index.ts';
import { german } from '../../src/texts/de/index.ts';
import { englishLanguage, type Language } from '../../src/texts/index.ts';
import { cardNamed, latheKind, textOf } from '../flow/shipped.ts';
import { sourcesIn } from '../house/sources.ts';
import { templatesIn } from './worded-in.ts';

const sentences = german.sentences ?? {};

const templates = Object.entries(sourcesIn('src'))
  .filter(([path]) => path.startsWith('proof/'))
  .flatMap(([, source]) => templatesIn(source));

function germanLathe(): MachineKind {
  const texts = textOf('texts/de/lathe.json');
  const made = translateFile('lathe.json', textOf('kinds/lathe.json'), texts);
  const read = made.ok ? readKind('lathe.json', made.text) : made;
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

/** Hands go in, and nothing asks whether it stands still: two steps, so that there is a way to tell. */
function careless(language: Language): Job {
  const steps = [
    { id: 'look', title: 'Ansehen', kind: 'tell', say: 'Sieh hin.', next: 'reach' },
    { id: 'reach', title: 'Greifen', kind: 'tell', say: 'Greif hinein.', hands: true, next: 'end' },
  ];
  const head = { followrest: 'flow', version: 1, id: 'small', revision: 1, title: 'S', about: '' };
  const flow = readFlowValue('small', { ...head, machineKind: 'lathe', steps });
  const kind = language.spoken ? germanLathe() : latheKind();
  const read = resolveFlow(flow, new Map([['lathe', kind]]), language);
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  const made = compileJob(read.flow, cardNamed('metric-lathe'));
  if (!made.ok) throw new Error(made.faults.join('\n'));
  return made.job;
}

describe('in German', () => {
  it('every sentence of what is wrong is there', () => {
    expect(templates.length).toBeGreaterThan(25);
    expect(templates.filter((key) => !Object.hasOwn(sentences, key))).toEqual([]);
  });

  it('every claim of the format is there', () => {
    const english: readonly string[] = Object.values(formatClaims);
    expect(english.filter((claim) => !Object.hasOwn(sentences, claim))).toEqual([]);
    const told = claimsOf(careless(german)).filter(({ id }) => id.startsWith('FORMAT-'));
    expect(told.filter(({ sentence }) => english.includes(sentence))).toEqual([]);
  });

  it('a broken claim is told with its way, and it is the same claim as in English', () => {
    const [here, there] = [german, englishLanguage].map(careless);
    if (!here || !there) throw new Error('two jobs');
    const [told, english] = [prove(here).problems, prove(there).problems];
    expect(told.map(({ claim, step }) => [claim, step])).toEqual(
      english.map(({ claim, step }) => [claim, step]),
    );
    const own = told.find(({ claim }) => claim === 'FORMAT-OWN-ASK');
    expect(own?.message).toMatch(/^Hände greifen hinein, und der Schritt selbst fragt nicht: /);
    expect(claimNamed(here, 'FORMAT-OWN-ASK').sentence).toMatch(/^Wo Hände hineingreifen/);
    const way = told.find(({ events }) => events !== undefined)?.events ?? [];
    const words = toldAs(here, way).filter(({ who }) => who === 'you');
    expect(words.map(({ says }) => says)).toEqual(['weiter']);
  });
});
