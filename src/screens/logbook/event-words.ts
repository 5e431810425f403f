/** What a word was taken for, as a person would put it. Pure. */

import type { RunEntry } from '../../bench/index.ts';
import type { Job } from '../../flow/index.ts';
import { type Language, recordTexts, sayIn } from '../../texts/index.ts';
import { sizeText } from './verdict-words.ts';

const PLAIN = {
  next: 'eventNext',
  back: 'eventBack',
  hold: 'eventHold',
  stop: 'eventStop',
  'carry-on': 'eventCarryOn',
  interrupted: 'eventBreak',
  undo: 'eventUndo',
  note: 'eventNote',
} as const;

export function eventText({ event, understood }: RunEntry, job: Job, language: Language): string {
  const say = sayIn(language, recordTexts);
  if (event === null) {
    return understood === undefined ? say('nothing') : say('asPhrase', { phrase: understood });
  }
  const type = String(event.type);
  const word = (name: string) => String(event[name] ?? '');
  switch (type) {
    case 'fact':
      return say('eventFact', factWords(job, word('fact'), word('state')));
    case 'reading':
      return say('eventReading', { value: sizeText(Number(event.value), '', language) });
    case 'choose':
      return say('eventChoose', { option: optionWord(job, word('option')) });
    case 'trouble':
      return say('eventTrouble', { walk: walkTitle(job, word('walk')) });
    case 'release':
      return say('eventRelease', { name: word('byName') });
    default:
      return say(type in PLAIN ? PLAIN[type as keyof typeof PLAIN] : 'eventOther');
  }
}

function factWords(job: Job, id: string, stateId: string): { fact: string; state: string } {
  const fact = job.flow.kind.facts.find((one) => one.id === id);
  const state = fact?.states.find((one) => one.id === stateId);
  return { fact: fact?.label ?? id, state: state?.word ?? stateId };
}

function optionWord(job: Job, id: string): string {
  const options = job.flow.file.steps.flatMap((step) =>
    step.kind === 'choose' ? step.options : [],
  );
  return options.find((one) => one.id === id)?.word ?? id;
}

function walkTitle(job: Job, id: string): string {
  return job.flow.kind.walks.find((one) => one.id === id)?.title ?? id;
}
