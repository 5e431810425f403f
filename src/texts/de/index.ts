/** German: JSON files of the same keys as the English tables, one an area. Fetched when it is chosen. */

import type { Language, Tables } from '../language.ts';
import frame from './frame.json';

const tables: Tables = { frame };

export const german: Language = { code: 'de', locale: 'de-DE', name: 'Deutsch', tables };
