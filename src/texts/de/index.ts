/** German: JSON files of the same keys as the English tables, one an area. Fetched when it is chosen. */

import type { Language, Tables } from '../language.ts';
import apprentice from './apprentice.json';
import frame from './frame.json';
import glossary from './glossary.json';
import people from './people.json';
import proof from './proof.json';
import record from './record.json';
import why from './why.json';

const tables: Tables = { apprentice, glossary, frame, why, proof, people, record };

export const german: Language = { code: 'de', locale: 'de-DE', name: 'Deutsch', tables };
