/** Words that a file shows by itself, outside the room of texts: none, but for what no person reads as a sentence. */

import { describe, expect, it } from 'vitest';
import { sourcesIn } from '../house/sources.ts';
import { wordsIn } from '../house/words-in.ts';

/** Whose words reach the page. */
const rooms = ['screens/', 'front/', 'logbook/', 'main.tsx'];

/** The same in every language, or read by programs alone; each group says why. */
const noSentences: readonly string[] = [
  // Our name, a language by its own people, and what is printed on a key or comes from the browser as a key.
  ...['Followrest', 'Deutsch', 'Enter', 'Space', 'Backspace', 'Escape'],
  // Words of command by their English name: `commandSaid` shows and says them in the language of the run.
  ...['where am I', 'what can I say', 'how much is left', 'why that', 'carry on'],
  ...['where am i', 'what can i say'],
  // Columns of tables that programs read, which must be the same everywhere.
  ...['flow version', 'given up', 'last run', 'released by'],
  ...['readings in tolerance', 'readings judged'],
  // Outcomes and messages between tabs, never shown.
  ...['already here', 'not granted', 'who leads'],
  // Names of classes, selectors, conditions and colours of the style sheet.
  ...['dock-next main', 'figure large', 'input, textarea, select, [contenteditable]'],
  '(orientation: landscape) and (min-width: 56rem)',
];

/** Markup and colours as text: a drawing that is written to a file, or a colour with what stands in for it. */
const forTheBrowser = /^(?:<svg |<rect |var\(--|color-mix\()/;

function isStranger(text: string): boolean {
  return !noSentences.includes(text) && !forTheBrowser.test(text);
}

const files = Object.entries(sourcesIn('src'))
  .filter(([path]) => rooms.some((room) => path.startsWith(room)))
  .map(([path, source]) => ({ path, words: wordsIn(path, source) }));
const strangers = files.flatMap(({ path, words }) =>
  words.filter(isStranger).map((text) => ({ path, text })),
);

describe('what reaches the page', () => {
  it('has no words of its own', () => {
    expect(strangers).toEqual([]);
  });

  it('still has every word that is let through', () => {
    const all = new Set(files.flatMap(({ words }) => words));
    expect(noSentences.filter((text) => !all.has(text))).toEqual([]);
  });
});

describe('words are seen', () => {
  it.each([
    ['between tags', '<p class="x">Hello {name}, again</p>', ['Hello', ', again']],
    ['in what is read aloud', '<a aria-label="leave">{text}</a>', ['leave']],
    ['in a part of the page that gets a text', '<Part name="a" lead="Take it" />', ['Take it']],
    ['in a choice inside a name', "<i title={on ? 'It is on' : text} />", ['It is on']],
    ['in a template', `const a = \`Not kept: \${why}\`;`, ['Not kept: {}']],
    ['in a table', "const a = { auto: 'Light', b: ['two words'] };", ['Light', 'two words']],
    ['in a fault', "throw new Error('It is no text.');", ['It is no text.']],
    ['as a type that says more', "const a = ['Dark'] as const;", ['Dark']],
  ])('%s', (_where, source, words) => {
    expect(wordsIn('a.tsx', source)).toEqual(words);
  });

  it('only where a person would read them', () => {
    const source = `import a from './Two words.ts';
      type A = 'Dark' | 'two words';
      const b = <p class="button tall" data-x="Two words" id="Two">{say('key')}</p>;
      // Two words`;
    expect(wordsIn('a.tsx', source)).toEqual([]);
  });
});
