/** The prove command, started as a person starts it, on flows of two or three steps. */

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readProveWords } from '../../src/cli/prove-words.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'followrest-prove-'));
afterAll(() => rmSync(folder, { recursive: true }));

function prove(...words: readonly string[]) {
  return proveWith([], words);
}

function proveWith(options: readonly string[], words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['node_modules/tsx/dist/cli.mjs', ...options, 'src/cli/prove.ts', ...words],
    { cwd: root, encoding: 'utf8' },
  );
  return { status, stdout, stderr };
}

/** As a person at a terminal sees it. */
const atTerminal = ['--import', 'data:text/javascript,process.stdout.isTTY=true'];

const step = (id: string, more: object) => ({ id, title: id, say: 'Do it.', ...more });

function fileOf(name: string, steps: readonly object[]): string {
  const path = join(folder, `${name}.json`);
  const head = { followrest: 'flow', version: 1, id: name, revision: 1, title: name, about: '' };
  const gates = { still: { spindle: 'stopped' } };
  writeFileSync(path, JSON.stringify({ ...head, machineKind: 'lathe', gates, steps }, null, 2));
  return path;
}

const still = { gates: ['still'] };
const good = fileOf('good', [step('look', { kind: 'tell', ...still })]);
const careless = fileOf('careless', [
  step('reach', { kind: 'do', hands: true, ends: { 'chuck-key': 'out' } }),
  step('leave', { kind: 'tell', ...still }),
]);
const bad = join(folder, 'bad.json');
writeFileSync(bad, '{\n  "followrest": "flow",\n  "steps": [}\n');

interface Told {
  readonly [key: string]: unknown;
  readonly problems: readonly { readonly claim: string; readonly replay?: string }[];
}

describe('npm run -s prove', { timeout: 60_000 }, () => {
  let said: ReturnType<typeof prove>;
  let told: readonly Told[];
  beforeAll(() => {
    said = proveWith(atTerminal, [good, careless, '--card', 'metric-lathe', '--json']);
    told = said.stdout
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Told);
  }, 60_000);

  it('gives a line of JSON a flow by --json, also at a terminal, with verdict, claims and coverage, and exits 1 for a broken one', () => {
    expect(said.status).toBe(1);
    const [proved, broken] = told;
    expect(proved).toMatchObject({ flow: 'good', ok: true, verdict: 'proved', problems: [] });
    expect(proved?.coverage).toMatchObject({
      steps: 1,
      ofSteps: 1,
      cards: [{ card: 'metric-lathe', states: [3, 3], percent: expect.any(Number) }],
    });
    expect(proved?.covers).toContain('Machine cards: metric-lathe.');
    expect(broken).toMatchObject({ flow: 'careless', ok: false, verdict: 'broken' });
    expect(broken?.claims).toContainEqual({
      id: 'LATHE-HANDS-IN',
      sentence: expect.stringContaining('Hands never go in'),
      holds: false,
    });
    expect(proved?.claims).toContainEqual({
      id: 'FORMAT-HEARD',
      sentence: 'Every word that may be said has a pronunciation.',
      holds: true,
    });
    expect(broken?.claims).toContainEqual({
      id: 'LATHE-GUARD',
      sentence: 'The spindle never runs with the guard open.',
      holds: true,
    });
  });

  it('tells faults with line and column, exits 2, and judges the other files all the same', () => {
    const more = prove(bad, join(folder, 'nowhere.json'), good, '--card', 'metric-lathe');
    expect(more.status).toBe(2);
    expect(more.stderr).toMatch(/bad\.json:3:\d+ /);
    expect(more.stderr).toContain('nowhere.json');
    expect(JSON.parse(more.stdout)).toMatchObject({ flow: 'good', verdict: 'proved' });
  });

  it('replays the line that a broken claim prints, to the very step', () => {
    const hurt = told[1]?.problems.find(({ claim }) => claim === 'LATHE-HANDS-IN');
    const words = /--replay "(.*)"$/.exec(hurt?.replay ?? '')?.[1];
    const played = prove(careless, '--card', 'metric-lathe', '--replay', words ?? '?');
    expect(played.status).toBe(0);
    expect(JSON.parse(played.stdout)).toMatchObject({ flow: 'careless', step: 'reach' });
  });

  it('tells a person at a terminal in a table and in sentences', () => {
    const table = proveWith(atTerminal, [careless, '--card', 'metric-lathe']);
    expect(table.status).toBe(1);
    expect(table.stdout).toMatch(/^careless: broken\n/);
    expect(table.stdout).toMatch(/metric-lathe +\d+ of \d+ +\d+ of \d+ .* %\n/);
    expect(table.stdout).toContain('LATHE-HANDS-IN  Hands never go in');
  });

  it('scores the mutants of a flow', () => {
    const score = prove(good, '--mutants');
    expect(JSON.parse(score.stdout)).toMatchObject({ flow: 'good', ok: true, percent: 100 });
    expect(score.status).toBe(0);
  });
});

describe('the words behind prove', () => {
  it.each([
    [['--jsn'], 'There is no "--jsn". There are: --json, --inputs, --mutants, --card, --replay.'],
    [['--card'], '--card needs a value behind it.'],
    [['--replay', 'next'], '--replay plays one flow: name one FILE before it.'],
    [
      ['a.json', '--mutants', '--replay', 'next'],
      '--replay plays one line, and --mutants judges many flows: choose one.',
    ],
    [['--inputs', '--mutants'], '--inputs and --mutants are two things to do: choose one.'],
  ])('%j are refused with a sentence', (given, fault) => {
    expect(readProveWords(given)).toEqual({ ok: false, fault });
  });

  it('take files and switches in any order', () => {
    expect(readProveWords(['--json', 'a.json', '--card', 'x', 'b.json'])).toEqual({
      ok: true,
      words: { files: ['a.json', 'b.json'], json: true, inputs: false, mutants: false, card: 'x' },
    });
  });
});
