import { describe, expect, it } from 'vitest';
import { fileName } from '../../../src/screens/logbook/give-file.ts';
import { sizeText } from '../../../src/screens/logbook/verdict-words.ts';
import { durationText } from '../../../src/screens/logbook/when.ts';

describe('the words of the Logbook', () => {
  it.each([
    [0, 59_999, 'under a minute'],
    [0, 60_000, '1 min'],
    [1000, 1000 + 72 * 60_000, '1 h 12 min'],
  ])('tell a duration from %i to %i', (from, to, text) => {
    expect(durationText(from, to)).toBe(text);
  });

  it('show a size as it was read, without the dust of a change of unit', () => {
    expect(sizeText(15.98, 'mm', 3)).toBe('15.980 mm');
    expect(sizeText(0.1 + 0.2, 'in')).toBe('0.3 in');
    expect(sizeText(4, '')).toBe('4');
  });

  it('name a file by letters, figures and dashes alone', () => {
    expect(fileName(['gate-hinge-pin', '2026-11-25', 'Ida Öst / Hof'], 'csv')).toBe(
      'gate-hinge-pin-2026-11-25-ida-öst-hof.csv',
    );
  });
});
