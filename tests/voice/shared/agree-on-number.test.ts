/** Two opinions on one number. What must hold is common practice of two-pass recognition, no source. */
import { describe, expect, it } from 'vitest';
import { agreeOnNumber } from '../../../src/voice/shared/agree-on-number.ts';

const refused = { text: 'twenty five point one', confidence: 0.3 };
const taken = { text: 'twenty five point one', confidence: 0.6 };
const same = { phrase: 'twenty five point one', fit: -1, lead: 20, next: '', frames: 150 };
const other = { ...same, phrase: 'twenty five point nine' };

describe('two opinions on a number', () => {
  it('take what the engine alone would have refused', () => {
    const { text, confidence } = agreeOnNumber(refused, same);
    expect(text).toBe(refused.text);
    expect(confidence).toBeGreaterThan(0.5);
  });

  it('agree on a number said with other zeros', () => {
    const zeros = { ...same, phrase: 'twenty five point one oh' };
    expect(agreeOnNumber(refused, zeros).confidence).toBeGreaterThan(0.5);
  });

  it('refuse what fits as badly as other talk', () => {
    expect(agreeOnNumber(refused, { ...same, fit: -4 })).toEqual(refused);
  });

  it('take the other number only where it leads far', () => {
    expect(agreeOnNumber(taken, { ...other, lead: 5 })).toEqual(taken);
    expect(agreeOnNumber(taken, { ...other, lead: 60 }).text).toBe('twenty five point nine');
  });

  it('ask for more where the engine refused its own', () => {
    expect(agreeOnNumber(refused, { ...other, lead: 60 })).toEqual(refused);
    expect(agreeOnNumber(refused, { ...other, lead: 120 }).confidence).toBeGreaterThan(0.5);
  });

  it('leave a number as it is where there is no other opinion', () => {
    expect(agreeOnNumber(taken, null)).toEqual(taken);
  });
});
