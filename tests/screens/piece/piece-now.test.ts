import { describe, expect, it } from 'vitest';
import { positionOf } from '../../../src/flow/index.ts';
import { mainLine } from '../../../src/screens/piece/main-line.ts';
import { pieceNow } from '../../../src/screens/piece/piece-now.ts';
import { begun } from '../../bench/scripted.ts';
import { walkRight } from '../../flow/right-walk.ts';
import { hingePin } from '../../flow/shipped.ts';

const { job } = begun().state;
const statesAt = (step: string, readings: Readonly<Record<string, number>> = {}) => {
  const now = pieceNow(job, step, readings);
  return Object.fromEntries(Object.entries(now?.state ?? {}).map(([id, one]) => [id, one.state]));
};

describe('the main line of the hinge pin', () => {
  const line = mainLine(hingePin().file);

  it('goes from the first step to the record, past what only a fault leads to', () => {
    expect(line[0]).toBe('begin');
    expect(line.at(-1)).toBe('record');
    expect(line).not.toContain('scrap');
    expect(line).not.toContain('wrong-card');
  });

  it('is the way that a run takes when all goes well', () => {
    const visited = walkRight(job).map((at) => positionOf(at).step);
    expect(line.filter((step) => !visited.includes(step))).toEqual([]);
  });
});

describe('the piece', () => {
  it('is stock before anything is cut', () => {
    expect(new Set(Object.values(statesAt('mount')))).toEqual(new Set(['stock']));
  });

  it('shows what is cut now, and keeps what was cut', () => {
    expect(statesAt('turn-shank')).toMatchObject({ shank: 'now', 'grease-hole': 'stock' });
    expect(statesAt('drill')).toMatchObject({ shank: 'done', 'grease-hole': 'now' });
    expect(statesAt('record')).toEqual({
      shank: 'done',
      head: 'done',
      lead: 'done',
      'grease-hole': 'done',
    });
  });

  it('claims nothing as cut on the way to scrap but what was measured before', () => {
    const readings = { barNow: 25, pinNow: 15.2 };
    expect(statesAt('scrap', readings)).toMatchObject({ 'grease-hole': 'stock' });
  });

  it('bears its readings, each at its own dimension, with its verdict', () => {
    const now = pieceNow(job, 'record', { pinDone: 15.978, holeDone: 20 });
    // 16 h9 is 15.957 to 16.000 (ISO 286-2, table of shafts h).
    expect(now?.state.shank?.reading).toEqual({ value: 15.978, of: 'diameter', verdict: 'within' });
    expect(now?.state['grease-hole']?.reading).toMatchObject({ value: 20, of: 'length' });
    const small = pieceNow(job, 'scrap', { pinDone: 15.95 });
    expect(small?.state.shank?.reading?.verdict).toBe('lost');
  });

  it('has the sizes of the job', () => {
    const now = pieceNow(job, 'begin', {});
    expect(now?.piece.stock).toMatchObject({ diameter: 25, length: 73 });
    expect(now?.piece.features.map(({ id }) => id)).toEqual([
      'shank',
      'head',
      'lead',
      'grease-hole',
    ]);
  });
});
