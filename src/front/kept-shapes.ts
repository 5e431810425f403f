/** Who can read which kept value: a file that is taken in must hold nothing that its owner would not. */

import type { JudgeKept } from '../logbook/index.ts';
import { materialKey, parseMaterial } from './materials.ts';
import { operatorKey, parseOperator } from './operators.ts';
import { parseSettings, settingsKey } from './settings.ts';
import { parseReplies, slateKey } from './slate-desk.ts';
import { cardEntry } from './texts.ts';

/** Each throws, or gives a sentence, when the value is none of its own. */
type Reader = (value: unknown, name: string) => unknown;

const READERS: Readonly<Record<string, Reader>> = {
  [settingsKey]: parseSettings,
  [slateKey]: parseReplies,
  [operatorKey]: (value, name) => {
    if (parseOperator(value).id !== name) throw new Error('It is kept under another name.');
  },
  [materialKey]: parseMaterial,
  'card/': (value) => {
    if (typeof value !== 'string') throw new Error('It is no text.');
    if (typeof cardEntry(value, true).id !== 'string') throw new Error('It is no card.');
  },
};

export const judgeKept: JudgeKept = (key, value) => {
  const [, folder = key, name = ''] = /^([^/]*\/)(.*)$/.exec(key) ?? [];
  const read = READERS[folder];
  if (!read) return `"${key}" is nothing that this version keeps.`;
  try {
    read(value, name);
    return null;
  } catch {
    return `"${key}" cannot be read.`;
  }
};
