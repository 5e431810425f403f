/** What is said once when the ear goes deaf, and when it hears again. Pure. */

import { type Language, sayIn, voiceTexts } from '../texts/index.ts';
import type { Deafness } from './ports.ts';

const lines = {
  noisy: 'deafNoisy',
  missing: 'deafMissing',
  refused: 'deafRefused',
  taken: 'deafTaken',
  failing: 'deafFailing',
} as const;

export function deafLine(language: Language, kind: Exclude<Deafness['kind'], 'off'>): string {
  return sayIn(language, voiceTexts)(lines[kind]);
}

export function hearsAgainLine(language: Language): string {
  return sayIn(language, voiceTexts)('hearsAgain');
}
