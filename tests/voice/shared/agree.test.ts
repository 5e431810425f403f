/** Two opinions on one utterance. What must hold is common practice of two-pass recognition, no source. */
import { describe, expect, it } from 'vitest';
import { agree, type Second, type Weight } from '../../../src/voice/shared/agree.ts';

const weightOf = (text: string): Weight => {
  if (text === 'why') return 'harmless';
  if (text === 'hold') return 'pausing';
  return text.startsWith('twenty') ? 'number' : 'phrase';
};
const where = { weightOf, overRoom: 8 };
const clear: Second = {
  phrase: 'guard closed',
  isOurs: true,
  fit: -0.5,
  lead: 64,
  next: 'hands clear',
  frames: 80,
};
const nothing = { text: '', confidence: 0 };

describe('two opinions', () => {
  it('take a phrase that scores clearly as a whole though the engine found nothing', () => {
    const { text, confidence } = agree(nothing, clear, where);
    expect(text).toBe('guard closed');
    expect(confidence).toBeGreaterThan(0.5);
  });

  it('take no phrase that hardly leads', () => {
    expect(agree(nothing, { ...clear, lead: 5 }, where).confidence).toBeLessThan(0.5);
  });

  it('take no phrase that fits badly', () => {
    expect(agree(nothing, { ...clear, fit: -4 }, where).confidence).toBeLessThan(0.5);
  });

  it('refuse where they contradict each other', () => {
    const sure = { text: 'hands clear', confidence: 0.8 };
    expect(agree(sure, clear, where).confidence).toBeLessThan(0.5);
  });

  it('refuse a phrase where a word of everyday talk is likelier', () => {
    const sure = { text: 'guard closed', confidence: 0.8 };
    const other = { ...clear, phrase: 'garden', isOurs: false };
    expect(agree(sure, other, where).confidence).toBeLessThan(0.5);
  });

  it('leave a number alone where a word of everyday talk is likelier than any phrase', () => {
    const sure = { text: 'twenty five', confidence: 0.8 };
    const other = { ...clear, phrase: 'twenty', isOurs: false };
    expect(agree(sure, other, where)).toEqual(sure);
  });

  it('ask more of a short question than of a word that only makes the job wait', () => {
    const said = { ...clear, fit: -2, lead: 50 };
    expect(agree(nothing, { ...said, phrase: 'hold' }, where).confidence).toBeGreaterThan(0.5);
    expect(agree(nothing, { ...said, phrase: 'why' }, where).confidence).toBeLessThan(0.5);
  });

  it('take no question of the length of a blow on one opinion, and a longer one', () => {
    const said = { ...clear, phrase: 'why', fit: -1, lead: 50, frames: 18 };
    expect(agree(nothing, said, where).confidence).toBeLessThan(0.5);
    expect(agree(nothing, { ...said, frames: 24 }, where).confidence).toBeGreaterThan(0.5);
  });

  it('ask less of a phrase in noise, where everything fits worse', () => {
    const said = { ...clear, fit: -2 };
    expect(agree(nothing, said, where).confidence).toBeLessThan(0.5);
    expect(agree(nothing, said, { ...where, overRoom: 3 }).confidence).toBeGreaterThan(0.5);
  });

  it('refuse a phrase that hardly fits, however sure the engine is: sooner one that hardly leads', () => {
    const sure = { text: 'guard closed', confidence: 0.8 };
    expect(agree(sure, { ...clear, fit: -5 }, where).confidence).toBeLessThan(0.5);
    expect(agree(sure, { ...clear, fit: -3 }, where)).toEqual(sure);
    expect(agree(sure, { ...clear, fit: -3, lead: 20 }, where).confidence).toBeLessThan(0.5);
  });

  it('make up for each other where both are of one opinion: what the engine lacks, fit and lead may have more of', () => {
    const doubtful = { text: 'guard closed', confidence: 0.2 };
    expect(agree(doubtful, { ...clear, fit: -1, lead: 48 }, where).confidence).toBeGreaterThan(0.5);
    expect(agree(doubtful, { ...clear, fit: -1.85, lead: 16 }, where).confidence).toBeLessThan(0.5);
    expect(agree(doubtful, { ...clear, fit: -1, lead: 8 }, where).confidence).toBeLessThan(0.5);
    const lost = { ...doubtful, confidence: 0.05 };
    expect(agree(lost, { ...clear, fit: -1, lead: 48 }, where).confidence).toBeLessThan(0.5);
  });

  it('let a question that the engine is sure of fit worse, the surer the worse', () => {
    const asked = { ...clear, phrase: 'why', fit: -2.1, lead: 30 };
    const sure = { text: 'why', confidence: 0.9 };
    expect(agree(sure, asked, where)).toEqual(sure);
    expect(agree({ ...sure, confidence: 0.55 }, asked, where).confidence).toBeLessThan(0.5);
  });

  it('let a very sure engine have its phrase where it comes next behind another that leads little', () => {
    const other = { ...clear, phrase: 'garden', isOurs: false, next: 'guard closed', lead: 40 };
    const sure = { text: 'guard closed', confidence: 0.8 };
    expect(agree(sure, other, where)).toEqual(sure);
    expect(agree({ ...sure, confidence: 0.6 }, other, where).confidence).toBeLessThan(0.5);
    expect(agree(sure, { ...other, lead: 72 }, where).confidence).toBeLessThan(0.5);
    expect(agree(sure, { ...other, next: 'next' }, where).confidence).toBeLessThan(0.5);
  });

  it('leave a number and a word that makes the job wait where there is no second, and refuse the rest', () => {
    for (const text of ['twenty five', 'hold']) {
      const sure = { text, confidence: 0.7 };
      expect(agree(sure, null, where)).toEqual(sure);
    }
    expect(agree({ text: 'guard closed', confidence: 0.7 }, null, where).confidence).toBeLessThan(
      0.5,
    );
  });
});
