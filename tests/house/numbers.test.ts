/** The house numbers: how long a file and a function may be, and what a file may not be called. */

import { parseSync } from 'vite';
import { describe, expect, it } from 'vitest';
import { nodesIn } from './imports.ts';
import type { Sources } from './judge-imports.ts';
import { sourcesIn } from './sources.ts';

const FILE_LINES = 400;
const FUNCTION_LINES = 60;
/** Tables may be long: their files are called table or data, or stand in a folder called so. */
const DATA = /(^|\/|-)(table|data)\.ts$|(^|\/)(tables|data|texts\/en)\//;
/** Names that say nothing of what is inside. */
const EMPTY_NAMES = /(^|\/)(utils?|helpers?|types|common|misc|shared)\.tsx?$/;
/** Comments that switch a check off. */
const SUPPRESSED = /@ts-(ignore|nocheck|expect-error)|biome-ignore(?! [\w/]+: \S+ \S+)/;

function longFiles(sources: Sources): readonly string[] {
  return Object.entries(sources)
    .filter(([path, text]) => !DATA.test(path) && lines(text) > FILE_LINES)
    .map(([path, text]) => `${path}: ${lines(text)} lines`);
}

function longFunctions(sources: Sources): readonly string[] {
  return Object.entries(sources).flatMap(([path, text]) =>
    nodesIn(parseSync(path, text).program)
      .filter((node) => /Function/.test(node.type) && node.body !== undefined)
      .map((node) => text.slice(Number(node.start), Number(node.end)))
      .filter((code) => lines(code) > FUNCTION_LINES)
      .map((code) => `${path}: ${lines(code)} lines from "${code.split('\n', 1)[0]}"`),
  );
}

function lines(text: string): number {
  return text.trimEnd().split('\n').length;
}

function filesWith(sources: Sources, pattern: RegExp): readonly string[] {
  return Object.keys(sources).filter((path) => pattern.test(sources[path] ?? ''));
}

describe('the house numbers', () => {
  const own = sourcesIn('src');
  const tests = sourcesIn('tests');

  it('keeps every file but tables of data to 400 lines', () => {
    expect([...longFiles(own), ...longFiles(tests)]).toEqual([]);
  });

  it('keeps every function of the program to 60 lines', () => {
    expect(longFunctions(own)).toEqual([]);
  });

  it('names no file by an empty word', () => {
    const paths = [...Object.keys(own), ...Object.keys(tests)];
    expect(paths.filter((path) => EMPTY_NAMES.test(path))).toEqual([]);
  });

  it('switches no check off without a reason', () => {
    expect(filesWith(own, SUPPRESSED)).toEqual([]);
  });

  it('skips no test and singles none out', () => {
    expect(filesWith(tests, /\b(it|test|describe)\.(skip|only|todo|fails)\b/)).toEqual([]);
  });
});

describe('the measure of the house', () => {
  it('sees a file that is too long, unless it is data', () => {
    const long = 'x;\n'.repeat(FILE_LINES + 1);
    expect(longFiles({ 'trade/a.ts': long, 'trade/thread-table.ts': long })).toEqual([
      'trade/a.ts: 401 lines',
    ]);
  });

  it('sees a function that is too long', () => {
    const body = '  x;\n'.repeat(FUNCTION_LINES);
    const found = longFunctions({ 'a.ts': `const f = () => {\n${body}};\nfunction g() {}\n` });
    expect(found).toEqual(['a.ts: 62 lines from "() => {"']);
  });

  it('takes a switched-off check only with a reason', () => {
    const bare = `// biome-${'ignore'} lint/a/b:`;
    expect(filesWith({ 'a.ts': `${bare} the parser proves it` }, SUPPRESSED)).toEqual([]);
    expect(filesWith({ 'a.ts': bare, 'b.ts': `// @ts-${'ignore'}` }, SUPPRESSED)).toHaveLength(2);
  });
});
