import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { saidAtStep } from '../../src/cli/hear-flow.ts';
import { readSaid } from '../../src/cli/hear-said.ts';
import { UNIT_IDS } from '../../src/words/index.ts';

const repository = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'followrest-hear-'));
afterAll(() => rmSync(folder, { recursive: true }));

function run(name: 'hear' | 'say', ...words: readonly string[]) {
  const done = spawnSync(process.execPath, ['--import', 'tsx', `src/cli/${name}.ts`, ...words], {
    cwd: repository,
    encoding: 'utf8',
  });
  return { status: done.status, out: done.stdout, told: done.stderr.trim() };
}

describe('say and hear', { timeout: 60_000 }, () => {
  it('hear again what was said, with the value of a number', () => {
    const file = join(folder, 'said.wav');
    expect(run('say', 'twenty five point one', file).status).toBe(0);
    const { out, status } = run('hear', file, '--said', 'next|stop|number mm 24.8 25.2');
    expect(status).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ heard: 'twenty five point one', value: 25.1 });
  });

  it.each([
    ['a file that is not there', ['none.wav', '--said', 'next'], /cannot be read/],
    ['no said list', ['none.wav'], /Say what may be heard/],
    ['an option it does not know', ['none.wav', '--loud'], /loud/],
    [
      'a unit it does not know',
      ['none.wav', '--said', 'number furlong 1 2'],
      /"furlong" is not a unit/,
    ],
  ])('answer %s with a sentence and exit 2', (_name, words, sentence) => {
    const { status, told } = run('hear', ...words);
    expect(status).toBe(2);
    expect(told).toMatch(sentence);
    expect(told.split('\n')).toHaveLength(1);
  });

  it('answer a file that is no WAV with a sentence and exit 2', () => {
    const file = join(folder, 'note.wav');
    writeFileSync(file, 'this is text');
    expect(run('hear', file, '--said', 'next')).toMatchObject({
      status: 2,
      told: expect.stringMatching(/not a WAV file/),
    });
  });

  it('say answers a voice it does not have with those it has, and exit 2', () => {
    const { status, told } = run('say', 'next', join(folder, 'x.wav'), '--voice', 'nobody');
    expect(status).toBe(2);
    expect(told).toMatch(/slt, rms/);
  });
});

describe('the said list of the command line', () => {
  it('is words and at most one number with unit and range', () => {
    expect(readSaid('next | guard closed|number in 0.5 0.75')).toEqual({
      phrases: ['next', 'guard closed'],
      number: { unit: 'in', min: 0.5, max: 0.75, decimals: 3 },
    });
  });

  it.each(['', '|', 'number mm', 'number mm 3 1', 'number mm a b', 'number mm 1 2|number mm 1 2'])(
    'that is "%s" is answered with a sentence',
    (text) => {
      expect(readSaid(text)).toEqual({ fault: expect.stringMatching(/\.$|"\.$/) });
    },
  );

  it('may have a number in every unit that can be read, written in any of its ways', () => {
    for (const unit of [...UNIT_IDS, 'inch', '°', 'rev/min']) {
      expect(readSaid(`number ${unit} 1 2`)).toMatchObject({ number: { unit } });
    }
  });

  it('with a unit that is not known is answered with those that are', () => {
    expect(readSaid('next|number furlong 1 2')).toEqual({
      fault: expect.stringMatching(/^"furlong" is not a unit numbers are read in: mm, in, .*\.$/),
    });
  });

  it.each(['123|next', 'next|24.9', 'next|…'])(
    'with a phrase nobody can say, as in "%s", is answered with a sentence',
    (text) => {
      expect(readSaid(text)).toEqual({ fault: expect.stringMatching(/has no letters\. .*"\.$/) });
    },
  );

  it('comes from a step of a flow, with its gate word', () => {
    const said = saidAtStep(join(repository, 'flows/gate-hinge-pin.json'), 'key-out');
    if ('fault' in said) throw new Error(said.fault);
    expect(said.phrases).toContain('key out');
    expect(said.phrases).toContain('stop');
  });

  it('has names of tools and materials behind a lead word', () => {
    const said = saidAtStep(join(repository, 'flows/gate-hinge-pin.json'), 'face');
    if ('fault' in said) throw new Error(said.fault);
    expect(said.phrases).not.toContain('carbide');
    expect(said.harmless).toEqual(expect.arrayContaining(['other words', 'repeat']));
    expect(said.harmless).not.toContain('guard closed');
  });

  it('of a step that is not there is answered with the steps that are', () => {
    expect(saidAtStep(join(repository, 'flows/gate-hinge-pin.json'), 'nowhere')).toEqual({
      fault: expect.stringMatching(/no step "nowhere".*key-out/),
    });
  });
});
