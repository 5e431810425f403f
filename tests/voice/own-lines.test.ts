/**
 * The second defence: shut while the mouth speaks, the ear hears nothing; but even an open one must take nothing from
 * a line of the tool's own that moves the flow. One line in twelve here; `npm run bench -- voice` plays them all.
 */
import { expect, it } from 'vitest';
import { hearOwnLines } from './own-lines.ts';

it('no line of the job moves the flow when an open ear hears it', async () => {
  const { lines, moved } = await hearOwnLines(12, 5);
  expect(lines).toBeGreaterThan(3);
  expect(moved).toEqual([]);
}, 120_000);
