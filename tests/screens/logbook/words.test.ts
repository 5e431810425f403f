import { describe, expect, it } from 'vitest';
import { fileName } from '../../../src/screens/logbook/give-file.ts';
import { sizeText } from '../../../src/screens/logbook/verdict-words.ts';
import { dateFormat, durationText } from '../../../src/screens/logbook/when.ts';
import { german } from '../../../src/texts/de/index.ts';
import { englishLanguage, logbookTexts, sayIn } from '../../../src/texts/index.ts';

describe('the words of the Logbook', () => {
  it.each([
    [0, 59_999, 'under a minute'],
    [0, 60_000, '1 min'],
    [1000, 1000 + 72 * 60_000, '1 h 12 min'],
  ])('tell a duration from %i to %i', (from, to, text) => {
    expect(durationText(from, to, sayIn(englishLanguage, logbookTexts))).toBe(text);
  });

  it('tell a day in the form of their language', () => {
    const how = { dateStyle: 'medium', timeZone: 'UTC' } as const;
    expect(dateFormat(german, how).format(Date.UTC(2026, 10, 25))).toBe('25.11.2026');
  });

  it('show a size as it was read, without the dust of a change of unit', () => {
    expect(sizeText(15.98, 'mm', englishLanguage, 3)).toBe('15.980 mm');
    expect(sizeText(0.1 + 0.2, 'in', englishLanguage)).toBe('0.3 in');
    expect(sizeText(4, '', englishLanguage)).toBe('4');
    expect(sizeText(15.98, 'mm', german, 3)).toBe('15,980 mm');
  });

  it('name a file by letters, figures and dashes alone', () => {
    expect(fileName(['gate-hinge-pin', '2026-11-25', 'Ida Öst / Hof'], 'csv')).toBe(
      'gate-hinge-pin-2026-11-25-ida-öst-hof.csv',
    );
  });
});
