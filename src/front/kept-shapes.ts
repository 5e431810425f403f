/** Who can read which kept value: a file that is taken in must hold nothing that its owner would not. */

import type { JudgeKept } from '../logbook/index.ts';
import type { frontTexts, Say } from '../texts/index.ts';
import { materialKey, parseMaterial } from './materials.ts';
import { operatorKey, parseOperator } from './operators.ts';
import { parseSettings, settingsKey } from './settings.ts';
import { parseReplies, slateKey } from './slate-desk.ts';
import { cardEntry } from './texts.ts';

/** Each throws when the value is none of its own. */
type Reader = (value: unknown, name: string) => unknown;

const READERS: Readonly<Record<string, Reader>> = {
  [settingsKey]: parseSettings,
  [slateKey]: parseReplies,
  [operatorKey]: (value, name) => {
    if (parseOperator(value).id !== name) throw new TypeError(name);
  },
  [materialKey]: parseMaterial,
  'card/': (value) => {
    if (typeof value !== 'string') throw new TypeError(typeof value);
    if (typeof cardEntry(value, true).id !== 'string') throw new TypeError(value);
  },
};

export const judgeKept =
  (say: Say<typeof frontTexts>): JudgeKept =>
  (key, value) => {
    const [, folder = key, name = ''] = /^([^/]*\/)(.*)$/.exec(key) ?? [];
    const read = READERS[folder];
    if (!read) return say('unknownKey', { key });
    try {
      read(value, name);
      return null;
    } catch {
      return say('unreadable', { key });
    }
  };
