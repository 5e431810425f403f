/** German: JSON files of the same keys as the English tables, one an area. Fetched when it is chosen. */

import type { Language, Tables } from '../language.ts';
import apprentice from './apprentice.json';
import asks from './asks.json';
import batch from './batch.json';
import begin from './begin.json';
import bench from './bench.json';
import claims from './claims.json';
import commands from './commands.json';
import dock from './dock.json';
import drawing from './drawing.json';
import ear from './ear.json';
import faults from './faults.json';
import flow from './flow.json';
import frame from './frame.json';
import front from './front.json';
import glossary from './glossary.json';
import hearing from './hearing.json';
import keeping from './keeping.json';
import logbook from './logbook.json';
import machine from './machine.json';
import options from './options.json';
import people from './people.json';
import piece from './piece.json';
import plot from './plot.json';
import proof from './proof.json';
import record from './record.json';
import settings from './settings.json';
import shop from './shop.json';
import slate from './slate.json';
import spoken from './spoken.json';
import trade from './trade.json';
import voice from './voice.json';
import why from './why.json';

const tables: Tables = {
  ear,
  begin,
  bench,
  commands,
  dock,
  drawing,
  flow,
  keeping,
  front,
  logbook,
  piece,
  machine,
  hearing,
  options,
  batch,
  apprentice,
  asks,
  glossary,
  frame,
  settings,
  shop,
  slate,
  voice,
  why,
  plot,
  proof,
  people,
  record,
};

export const german: Language = {
  code: 'de',
  locale: 'de-DE',
  name: 'Deutsch',
  tables,
  sentences: { ...trade, ...claims, ...faults },
  spoken,
};
