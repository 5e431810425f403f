import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { schemaFiles } from '../../src/cli/schema-files.ts';

const committed = (name: string) =>
  readFileSync(new URL(`../../flows/schema/${name}`, import.meta.url), 'utf8');

test.each(Object.entries(schemaFiles()))('%s is what `npm run schema` writes', (name, text) => {
  expect(committed(name)).toBe(text);
});

test('every shipped file names the schema of its kind', () => {
  const named = ['gate-hinge-pin.json', 'kinds/lathe.json', 'machines/inch-lathe.json'].map(
    (path) => {
      const url = new URL(`../../flows/${path}`, import.meta.url);
      const { $schema, followrest } = JSON.parse(readFileSync(url, 'utf8'));
      const schema = JSON.parse(readFileSync(new URL($schema, url), 'utf8'));
      return [followrest, schema.properties.followrest.const];
    },
  );
  expect(named).toEqual([
    ['flow', 'flow'],
    ['machine-kind', 'machine-kind'],
    ['machine-card', 'machine-card'],
  ]);
});
