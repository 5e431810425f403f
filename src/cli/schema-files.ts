/** The JSON schemas of our kinds of file, as the shapes that read them say. */

import { z } from 'zod';
import { cardShape, flowShape, kindShape, textsShape } from '../flow/index.ts';
import { logbookFileShape } from '../logbook/file-shape.ts';

const shapes = {
  flow: [flowShape, 'A job at a manual machine, step by step'],
  'machine-kind': [kindShape, 'What machines of one kind have in common: facts, hazards, parts'],
  logbook: [
    logbookFileShape,
    'Everything of one Logbook: runs, photos, and what is kept beside them',
  ],
  'machine-card': [cardShape, 'What one machine in one shop can do'],
  texts: [textsShape, 'The texts of a flow or a machine kind in another language'],
} as const;

/** File name in flows/schema → its text. Editors read these; the program reads the shapes themselves. */
export function schemaFiles(): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(shapes).map(([name, [shape, title]]) => {
      const schema = { title, ...z.toJSONSchema(shape, { io: 'input', reused: 'ref' }) };
      return [`${name}.schema.json`, `${JSON.stringify(schema, null, 2)}\n`];
    }),
  );
}
