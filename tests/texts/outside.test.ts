/** Words that a screen writes by itself, outside the room of texts: none in a file that is not on the list. */

import { describe, expect, it } from 'vitest';
import { sourcesIn } from '../house/sources.ts';

/** English only so far. A file leaves the list when its words have moved; none is added. */
const notMovedYet: readonly string[] = [];

/** Text between tags, and names and hints in attributes, with a word of three letters or more. */
const wordsInMarkup =
  /(?<=[a-z"'})]>)\s*[^<>{}=;()]*\b[A-Za-z]{3,}[^<>{}=;()]*(?=<\/|\{|<[a-z])|(?:aria-label|label|title|placeholder|name)="[A-Z][^"]*"/g;

/** Names that are the same in every language: ours, and what is printed on a key. */
const names = ['Followrest', 'Enter'];

function wordsOf(source: string): readonly string[] {
  const code = source.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
  return [...code.matchAll(wordsInMarkup)]
    .map(([found]) => found.trim())
    .filter((text) => !names.includes(text));
}

const screens = Object.entries(sourcesIn('src')).filter(
  ([path]) => path.startsWith('screens/') && path.endsWith('.tsx'),
);

describe('the screens', () => {
  it('write no words of their own, but for those that have not moved yet', () => {
    const speaking = screens
      .filter(([, source]) => wordsOf(source).length > 0)
      .map(([path]) => path);
    expect(speaking.filter((path) => !notMovedYet.includes(path))).toEqual([]);
  });

  it('leave the list when their words have moved', () => {
    const silent = screens
      .filter(([, source]) => wordsOf(source).length === 0)
      .map(([path]) => path);
    expect(notMovedYet.filter((path) => silent.includes(path))).toEqual([]);
  });

  it('are seen through: a word between tags and one in a name', () => {
    expect(wordsOf('<p class="x">Hello there</p>')).toEqual(['Hello there']);
    expect(wordsOf('<a aria-label="Leave it">{text}</a>')).toEqual(['aria-label="Leave it"']);
    expect(wordsOf('<p>{say("x")}</p>')).toEqual([]);
  });
});
