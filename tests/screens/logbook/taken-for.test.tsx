import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { RunEntry } from '../../../src/bench/index.ts';
import { Entries } from '../../../src/screens/logbook/Entries.tsx';
import { eventText } from '../../../src/screens/logbook/event-words.ts';
import { german } from '../../../src/texts/de/index.ts';
import { englishLanguage } from '../../../src/texts/index.ts';
import { shippedJob } from '../../bench/scripted.ts';
import { entry } from '../../logbook/sample-run.ts';

const job = shippedJob();
const question = (text: string, change: Partial<RunEntry> = {}) =>
  entry('run-1', 0, {
    heard: { text, from: 'speech', confidence: 0.8 },
    ...{ event: null, outcome: 'asked' },
    ...change,
  });

describe('what a word was taken for, in the Logbook', () => {
  it('is told of a question too, in both languages', () => {
    const asked = question('where i am', { understood: 'where am i' });
    expect(eventText(asked, job, englishLanguage)).toBe('“where am i”, which moved nothing');
    expect(eventText(asked, job, german)).toBe('„where am i“, was nichts bewegte');
  });

  it('is nothing in a record from before it was kept', () => {
    expect(eventText(question('where am i'), job, englishLanguage)).toBe(
      'nothing that moves the job',
    );
  });

  it('stands in the list where it differs from what was heard', () => {
    const page = (one: RunEntry) => render(<Entries entries={[one]} job={job} />);
    expect(page(question('where i am', { understood: 'where am i' }))).toContain(
      '80 % sure, taken for “where am i”',
    );
    expect(page(question('where am i', { understood: 'where am i' }))).not.toContain('taken for');
    expect(page(question('where i am'))).not.toContain('taken for');
  });
});
