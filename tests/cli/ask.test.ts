/** The ask command, started as a person starts it. */

import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

function ask(...words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['node_modules/tsx/dist/cli.mjs', 'src/cli/ask.ts', ...words],
    { cwd: root, encoding: 'utf8' },
  );
  return { status, stdout, stderr };
}

describe('npm run -s ask', () => {
  it('answers a question in inches with one line of JSON', () => {
    const said = ask(
      'card-speed',
      'diameter=1 3/8in',
      'surfaceSpeed=90ft/min',
      'speeds=70,200,450',
    );
    expect(said.status).toBe(0);
    expect(said.stdout.trim().split('\n')).toHaveLength(1);
    // 1000 × 27.432 ÷ (π × 34.925) = 250, by hand.
    expect(JSON.parse(said.stdout)).toMatchObject({
      rule: 'card-speed',
      value: 200,
      unit: 'rev/min',
      ruledBy: 'the surface speed',
    });
  });

  it('lists every rule with inputs, units and source', () => {
    const listed: unknown = JSON.parse(ask('--list').stdout);
    expect(listed).toBeInstanceOf(Array);
    expect(listed).toContainEqual(
      expect.objectContaining({
        name: 'spindle-speed',
        unit: 'rev/min',
        source: expect.stringContaining('Groover'),
        inputs: expect.arrayContaining([
          expect.objectContaining({ name: 'diameter', unit: 'mm', quantity: 'length' }),
        ]),
      }),
    );
  });

  it('ends with 2 and one sentence for what is misspelt', () => {
    const said = ask('spindel-speed', 'diameter=25');
    expect(said).toMatchObject({ status: 2, stdout: '' });
    expect(said.stderr.trim()).toBe(
      'There is no rule "spindel-speed"; --list shows all. Did you mean "spindle-speed"?',
    );
  });
});
