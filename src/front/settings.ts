/** What a person has chosen on this device: looks, voice, operator. Kept in the logbook, read once at start. */

import { z } from 'zod';
import type { Logbook } from '../logbook/index.ts';
import type { Settings } from '../screens/world.ts';

const settingsShape = z.object({
  language: z.string().max(8).catch('en'),
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

export const settingsKey = 'settings';

/** Every field falls back by itself; what is no record at all is refused. */
export const parseSettings = (value: unknown): Settings => settingsShape.parse(value);

export interface SettingsKeeper {
  current(): Settings;
  change(part: Partial<Settings>): Promise<void>;
  /** Reads them again, as after a file was taken in. */
  again(): Promise<void>;
}

/** A setting that cannot be read falls back by itself; the others are kept. */
export async function openSettings(logbook: Logbook): Promise<SettingsKeeper> {
  let settings: Settings = (await logbook.recall(settingsKey, parseSettings)) ?? parseSettings({});
  return {
    current: () => settings,
    async change(part) {
      settings = settingsShape.parse({ ...settings, ...part });
      await logbook.keep(settingsKey, settings);
    },
    async again() {
      settings = (await logbook.recall(settingsKey, parseSettings)) ?? settings;
    },
  };
}
