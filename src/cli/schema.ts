/** Writes flows/schema anew. Wires only: what stands in the files is said by the shapes. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { repository } from './flow-files.ts';
import { schemaFiles } from './schema-files.ts';

for (const [name, text] of Object.entries(schemaFiles())) {
  writeFileSync(join(repository, 'flows/schema', name), text);
}
