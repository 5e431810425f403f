import { describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../src/cli/flow-files.ts';
import { proveFlow } from '../src/cli/prove-report.ts';

const kinds = shippedKinds();

describe.each(shippedFlows())('%s', (path) => {
  it('has a caution for "why" in every step that cuts', () => {
    const read = readFlowAt(path, kinds);
    if (!read.ok) throw new Error(read.faults.map((fault) => fault.message).join('\n'));
    const cuts = read.flow.file.steps.filter(({ kind }) => kind === 'cut' || kind === 'passes');
    expect(cuts.length).toBeGreaterThan(0);
    expect(cuts.filter(({ cautions }) => cautions.length === 0).map(({ id }) => id)).toEqual([]);
  });

  it('is proved with every shipped machine card', () => {
    const read = readFlowAt(path, kinds);
    if (!read.ok) throw new Error(read.faults.map((fault) => fault.message).join('\n'));
    const cards = shippedCards().filter((card) => card.machineKind === read.flow.kind.id);
    const report = proveFlow(path, read.flow, cards);
    const told = report.problems.map(
      ({ claim, sentence, step, message, path: turns }) =>
        `${claim}: ${sentence} Step "${step}": ${message} ${turns.join(' | ')}`,
    );
    expect(told).toEqual([]);
    expect(report.verdict).toBe('proved');
  }, 120_000);
});
