/** Why an ear is deaf: its kind, and the sentence for the person in the language of the page. Pure. */
import type { Deafness } from '../../bench/ports.ts';
import { hearingTexts, type Language, sayIn } from '../../texts/index.ts';

/** By name of its sentence. */
const kinds = {
  insecurePage: 'missing',
  noMicrophone: 'missing',
  noUsableMicrophone: 'missing',
  unplugged: 'missing',
  noService: 'missing',
  noPack: 'missing',
  otherTab: 'taken',
  otherProgram: 'taken',
  taken: 'taken',
  refused: 'refused',
  noNetwork: 'failing',
  noSign: 'failing',
  noSound: 'failing',
  broken: 'failing',
} as const satisfies Partial<Record<keyof typeof hearingTexts.texts, Deafness['kind']>>;

export type WhyDeaf = keyof typeof kinds;

/** Of the browser's speech alone: the ear of this page needs none of it. */
const ofTheBrowser: ReadonlySet<WhyDeaf> = new Set(['noService', 'noPack', 'noNetwork', 'noSign']);

export function deafness(language: Language, why: WhyDeaf): Deafness {
  const other = ofTheBrowser.has(why) ? ({ otherMayHear: true } as const) : {};
  return { kind: kinds[why], sentence: sayIn(language, hearingTexts)(why), ...other };
}

/** What kept the ear of this page from starting. */
export class NotStarted extends Error {
  constructor(readonly why: 'tooSlow' | 'noProgram') {
    super(why);
  }
}

export function notStarted(language: Language, problem: unknown): Deafness {
  const say = sayIn(language, hearingTexts);
  const told = problem instanceof Error ? problem.message : String(problem);
  const why = problem instanceof NotStarted ? say(problem.why) : told;
  return { kind: 'failing', sentence: say('notStarted', { why }) };
}
