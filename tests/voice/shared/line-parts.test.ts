import { expect, it } from 'vitest';
import { partsOf } from '../../../src/voice/shared/line-parts.ts';

it('the parts of a line are its words and the pairs of them, each once, without figures', () => {
  expect(partsOf('Step 15: Cut, and cut.')).toEqual([
    ...['step', 'cut', 'and'],
    ...['step cut', 'cut and', 'and cut'],
  ]);
  expect(partsOf('')).toEqual([]);
});
