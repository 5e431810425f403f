/** The block of the latch keeper as its run goes. Limits: ISO 2768-1:1989, table 1, class m. */
import { describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedKinds } from '../../../src/cli/flow-files.ts';
import type { Job, JobInputs } from '../../../src/flow/index.ts';
import { mainLine } from '../../../src/screens/piece/main-line.ts';
import { pieceFigures } from '../../../src/screens/piece/piece-figures.ts';
import { pieceNow } from '../../../src/screens/piece/piece-now.ts';
import { jobOf } from '../../flow/shipped.ts';

function keeper(inputs: JobInputs = {}): Job {
  const read = readFlowAt('flows/latch-keeper.json', shippedKinds());
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  const card = shippedCards().find(({ id }) => id === 'metric-mill');
  return jobOf(read.flow, inputs, card);
}

const job = keeper();
const statesAt = (step: string, readings: Readonly<Record<string, number>> = {}) =>
  Object.fromEntries(
    Object.entries(pieceNow(job, step, readings)?.state ?? {}).map(([id, one]) => [id, one.state]),
  );

describe('the keeper', () => {
  it('has the sizes of the job', () => {
    const now = pieceNow(keeper({ blockLength: 80, slotWidth: 12 }), 'begin', {});
    expect(now?.piece.stock).toEqual({ length: 80, width: 25, height: 18 });
    expect(now?.piece.features).toMatchObject([
      { kind: 'face', id: 'top-face', side: 'top', size: 16, lower: 15.8, upper: 16.2 },
      {
        kind: 'slot',
        id: 'bolt-slot',
        along: 'length',
        width: 12,
        depth: 6,
        lower: 5.9,
        upper: 6.1,
      },
    ]);
    expect(now?.piece.features[1]).toHaveProperty('from', undefined);
  });

  it('is stock, then faced, then slotted', () => {
    expect(statesAt('clamp')).toEqual({ 'top-face': 'stock', 'bolt-slot': 'stock' });
    expect(statesAt('mill-face')).toEqual({ 'top-face': 'now', 'bolt-slot': 'stock' });
    expect(statesAt('face-more', { heightNow: 18, heightDone: 16.5 })).toMatchObject({
      'top-face': 'now',
    });
    expect(statesAt('mill-slot')).toEqual({ 'top-face': 'done', 'bolt-slot': 'now' });
    expect(statesAt('record')).toEqual({ 'top-face': 'done', 'bolt-slot': 'done' });
  });

  it('has every cut of the flow in the drawing', () => {
    const cuts = [...job.flow.steps.values()].filter(({ kind }) => kind === 'cut');
    expect(cuts.filter(({ makes }) => makes.length === 0)).toEqual([]);
    expect(mainLine(job.flow.file)).toContain('mill-slot');
  });

  it('bears its readings with their verdicts', () => {
    const now = pieceNow(job, 'record', { heightDone: 15.98, slotDone: 5.7 });
    expect(now?.state['top-face']?.reading).toMatchObject({ value: 15.98, verdict: 'within' });
    expect(now?.state['bolt-slot']?.reading).toMatchObject({ value: 5.7, verdict: 'rework' });
    const lost = pieceNow(job, 'scrap-out', { heightDone: 15.7 });
    expect(lost?.state['top-face']?.reading?.verdict).toBe('lost');
  });

  it('tells each of its sizes once, with what stands behind it', () => {
    const figures = pieceFigures(job, { context: { readings: {} } });
    const told = figures.map(({ label, text }) => `${label} ${text.replaceAll('\u00a0', ' ')}`);
    expect(told).toEqual([
      'stock length 60.00 mm',
      'stock width 25.00 mm',
      'stock height 18.00 mm',
      'top face size 16.00 mm',
      'top face lower 15.80 mm',
      'top face upper 16.20 mm',
      'bolt slot width 10.00 mm',
      'bolt slot depth 6.00 mm',
      'bolt slot lower 5.90 mm',
      'bolt slot upper 6.10 mm',
    ]);
  });
});
