/**
 * `npm run bench [-- NAME…]`: prints the figures of tests/speed/, one line of JSON each.
 * A NAME chooses files whose name contains it.
 */

import { readdirSync } from 'node:fs';
import { z } from 'zod';

const folder = new URL('../../tests/speed/', import.meta.url);

const figure = z.strictObject({
  name: z.string().min(1),
  value: z.number(),
  unit: z.string(),
  target: z.number().optional(),
});
type Measure = () => unknown;

const wanted = process.argv.slice(2);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && name !== 'figure.ts')
  .filter((name) => wanted.length === 0 || wanted.some((part) => name.includes(part)))
  .sort();

if (files.length === 0 && wanted.length > 0) {
  console.error(`No file of tests/speed/ is called like ${wanted.join(', ')}.`);
  process.exitCode = 2;
}
for (const file of files) await measure(file);

/** Prints the figures of one file; one that fails is told, and the others still run. */
async function measure(file: string): Promise<void> {
  try {
    const figures = z.array(figure).parse(await (await measureIn(file))());
    for (const each of figures) console.log(JSON.stringify(each));
  } catch (error) {
    console.error(`tests/speed/${file}: ${error instanceof Error ? error.message : error}`);
    process.exitCode = 1;
  }
}

/** The one function called like `tradeFigures` that a file exports. */
async function measureIn(file: string): Promise<Measure> {
  const exported = Object.entries<unknown>(await import(new URL(file, folder).href));
  const [found] = exported.filter(([name]) => name.endsWith('Figures'));
  if (!found || !isMeasure(found[1])) throw new Error('it exports no function named …Figures.');
  return found[1];
}

function isMeasure(value: unknown): value is Measure {
  return typeof value === 'function';
}
