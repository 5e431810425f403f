/** The import rule of the house: every import stands in the table of rooms. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { circlesOfFiles, circlesOfRooms } from './house/circles.ts';
import { importsOf } from './house/imports.ts';
import { judgeImports } from './house/judge-imports.ts';
import { ROOMS } from './house/rooms.ts';
import { sourcesIn } from './house/sources.ts';

describe('the house', () => {
  it('has only imports that its table allows', () => {
    expect(judgeImports(sourcesIn('src'))).toEqual([]);
  });

  it('has no files that need each other in a circle', () => {
    expect(circlesOfFiles(sourcesIn('src'))).toEqual([]);
  });

  it('has a table without circles', () => {
    expect(circlesOfRooms()).toEqual([]);
  });
});

describe('the compilers', () => {
  const configOf = (room: string): { compilerOptions?: { lib?: string[]; types?: string[] } } =>
    JSON.parse(readFileSync(new URL(`../src/${room}/tsconfig.json`, import.meta.url), 'utf8'));

  it.each(ROOMS.map(({ name }) => name))('know the room %s', (name) => {
    expect(configOf(name).compilerOptions?.lib).toContain('ES2023');
  });

  it.each(['trade', 'words', 'flow', 'proof', 'bench', 'voice/shared', 'offline/shared'])(
    'give %s no page, no timers and no console',
    (name) => {
      const { lib, types = [] } = configOf(name).compilerOptions ?? {};
      expect([lib, types]).toEqual([['ES2023'], []]);
    },
  );
});

/** A line that must be refused, where it stands, and words of the sentence it gets. */
const REFUSED: readonly (readonly [path: string, line: string, sentence: string])[] = [
  ['trade/feed.ts', "import { say } from '../words/index.ts';", 'looks into words/'],
  ['trade/feed.ts', "import type { Flow } from '../flow/index.ts';", 'looks into flow/'],
  ['trade/feed.ts', "export * from '../bench/index.ts';", 'looks into bench/'],
  ['trade/feed.ts', "const x = await import('../flow/index.ts');", 'looks into flow/'],
  ['trade/feed.ts', "type Flow = import('../flow/index.ts').Flow;", 'looks into flow/'],
  ['trade/feed.ts', "import x = require('../flow/index.ts');", 'looks into flow/'],
  ['trade/feed.ts', "import { z } from 'zod';", 'the package zod'],
  ['trade/feed.ts', "import { readFileSync } from 'node:fs';", 'node:fs of Node'],
  ['trade/feed.ts', "const fs = require('fs');", 'fs of Node'],
  ['trade/feed.ts', 'const x = await import(name);', 'computed name'],
  ['trade/feed.ts', "import '../../flows/gate-hinge-pin.json';", 'outside src/'],
  ['trade/feed.ts', "import { rule } from './index.ts';", 'its own door'],
  ['trade/deep/feed.ts', "import { rule } from '../index.ts';", 'its own door'],
  ['flow/read.ts', "import { rules } from '../trade/rules.ts';", 'enters trade/ by rules.ts'],
  ['flow/read.ts', "import { prove } from '../proof/index.ts';", 'belongs in bench/'],
  ['flow/read.ts', "import '@humanwhocodes/other';", 'the package @humanwhocodes/other'],
  ['proof/walk.ts', "import type { Rule } from '../words/index.ts';", 'looks into words/'],
  ['bench/job.ts', "import { openLogbook } from '../logbook/index.ts';", 'bench/ports.ts'],
  ['bench/job.ts', "import { openDB } from 'idb';", 'the package idb'],
  [
    'voice/page/ear.ts',
    "import type { Job } from '../../bench/index.ts';",
    'may see bench/ports.ts',
  ],
  ['voice/page/ear.ts', "import '../../flow/index.ts';", 'looks into flow/'],
  ['voice/worker/ear.ts', "import { mic } from '../page/microphone.ts';", 'looks into voice/page/'],
  ['voice/worklet/tap.ts', "import { match } from '../../words/index.ts';", 'looks into words/'],
  ['logbook/rows.ts', "import { read } from '../flow/index.ts';", 'import type'],
  ['logbook/rows.ts', "import { type Flow } from '../flow/index.ts';", 'import type'],
  ['screens/bench.tsx', "import { ear } from '../voice/page/index.ts';", 'handed in by main.tsx'],
  ['screens/bench.tsx', "const all = import.meta.glob('../logbook/*.ts');", 'looks into logbook/'],
  ['screens/bench.tsx', "import '../main.tsx';", 'main.tsx'],
  ['screens/bench.tsx', "new Worker(new URL('../voice/worker/a.ts', import.meta.url));", 'starts'],
  ['screens/bench.tsx', "import a from '../voice/worklet/tap.ts?worker&url';", 'starts'],
  ['cli/ask.ts', "import { Bench } from '../screens/index.ts';", 'looks into screens/'],
  ['cli/ask.ts', "import '../offline/worker/serve.ts';", 'looks into offline/worker/'],
  ['screens/bench.tsx', "import { clock } from '../front/clock.ts';", 'looks into front/'],
  ['front/begin.ts', "import { open } from '../logbook/database.ts';", 'Its doors: index.ts'],
  ['attic/box.ts', 'export const x = 1;', 'in no room'],
  ['cli/ask.ts', "import '../attic/box.ts';", 'in no room'],
];

const ALLOWED: readonly (readonly [path: string, line: string])[] = [
  ['trade/feed.ts', "import type { Rule } from './rule.ts';"],
  ['flow/read.ts', "import { parse } from '@humanwhocodes/momoa';"],
  ['flow/read.ts', "import { findRule } from '../trade/index.ts';"],
  ['voice/page/ear.ts', "import type { Ear } from '../../bench/ports.ts';"],
  ['voice/page/ear.ts', "import { decode } from '../shared/messages.ts';"],
  ['voice/page/ear.ts', "new Worker(new URL('../worker/a.ts', import.meta.url));"],
  ['logbook/rows.ts', "import type { Ledger } from '../bench/ports.ts';"],
  ['screens/bench.tsx', "import { useState } from 'preact/hooks'; const a = <p />;"],
  ['cli/ask.ts', "import '../../flows/gate-hinge-pin.json'; await import(file);"],
  ['front/begin.ts', "import type { World } from '../screens/world.ts';"],
  ['front/texts.ts', "const all = import.meta.glob('../../flows/*.json', { eager: true });"],
  ['main.tsx', "import './screens/index.ts'; import './voice/page/index.ts';"],
];

describe('the judge of imports', () => {
  it.each(REFUSED)('refuses in %s: %s', (path, line, sentence) => {
    const said = judgeImports({ [path]: line });
    expect(said).toHaveLength(1);
    expect(said[0]).toContain(sentence);
  });

  it.each(ALLOWED)('allows in %s: %s', (path, line) => {
    expect(judgeImports({ [path]: line })).toEqual([]);
  });

  it('tells a circle of files as a chain', () => {
    const chain = circlesOfFiles({
      'flow/a.ts': "import './b.ts';",
      'flow/b.ts': "export { c } from './c.ts';",
      'flow/c.ts': "import { a } from './a.ts'; import type { B } from './b.ts';",
    });
    expect(chain).toEqual(['flow/a.ts → flow/b.ts → flow/c.ts → flow/a.ts']);
  });

  it('does not mistake text or comments for imports', () => {
    expect(importsOf('a.ts', "// import 'zod'\nconst line = \"import 'zod'\";")).toEqual([]);
  });

  it('says so when a file does not parse', () => {
    expect(() => importsOf('flow/a.ts', 'import {')).toThrow('flow/a.ts does not parse');
  });
});
