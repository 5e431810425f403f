/** What a person has chosen on this device: looks, voice, operator. Kept in the logbook, read once at start. */

import { z } from 'zod';
import type { Logbook } from '../logbook/index.ts';
import type { Settings } from '../screens/world.ts';

const settingsShape = z.object({
  theme: z.enum(['auto', 'light', 'dark']).catch('auto'),
  textSize: z.number().min(0.6).max(2.5).catch(1),
  rate: z.number().min(0.5).max(2).catch(1),
  volume: z.number().min(0).max(1).catch(1),
  pitch: z.number().min(0).max(2).catch(1),
  ear: z.string().catch('auto'),
  mouth: z.string().catch('auto'),
  operator: z.string().max(60).catch(''),
  cardId: z.string().catch(''),
});

const key = 'settings';

export interface SettingsKeeper {
  current(): Settings;
  change(part: Partial<Settings>): Promise<void>;
}

/** A setting that cannot be read falls back by itself; the others are kept. */
export async function openSettings(logbook: Logbook): Promise<SettingsKeeper> {
  let settings: Settings =
    (await logbook.recall(key, (value) => settingsShape.parse(value))) ?? settingsShape.parse({});
  return {
    current: () => settings,
    async change(part) {
      settings = settingsShape.parse({ ...settings, ...part });
      await logbook.keep(key, settings);
    },
  };
}
