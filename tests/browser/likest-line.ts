/** Which of some lines was played: the ear of this page, in Node, listens to what came out of the loudspeaker. */

import { type LoadedEngine, loadDictionary, loadEngine } from '../../src/cli/hear-engine.ts';
import { hearSound } from '../../src/cli/hear-sound.ts';
import type { Sound } from '../../src/voice/shared/index.ts';
import { normalise } from '../../src/words/index.ts';

let engine: Promise<LoadedEngine> | undefined;

/** The line that the sound is heard as, or null. Lines with figures in them cannot be told here. */
export async function likestLine(sound: Sound, lines: readonly string[]): Promise<string | null> {
  engine ??= loadEngine();
  const phrases = new Map(lines.map((line) => [plain(line), line]));
  const wanted = { phrases: [...phrases.keys()] };
  const { utterances } = hearSound(await engine, loadDictionary(), wanted, sound);
  const heard = utterances.find((text) => text !== null);
  return (heard && phrases.get(heard)) ?? null;
}

function plain(line: string): string {
  return normalise(line).replaceAll('-', ' ');
}
