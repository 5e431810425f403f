/**
 * Every line that any flow of flows/ can say, played by the mouth of this page into its ear, which is shut but for
 * "stop" and "hold" meanwhile: `npm run bench -- lines`; some hours. `FOLLOWREST_LINES=2/5` plays the second fifth
 * of them. What was taken goes to stderr, and how far it is.
 */
import { flowFiles, linesOf } from '../voice/flow-lines.ts';
import { hearWhileShut } from '../voice/own-lines.ts';
import type { Figure } from './figure.ts';

const TELL_EVERY = 100;

export async function linesFigures(): Promise<readonly Figure[]> {
  const [part = 1, of = 1] = (process.env.FOLLOWREST_LINES ?? '1/1').split('/').map(Number);
  const all = new Map(
    flowFiles()
      .flatMap((file) => linesOf(file))
      .map((one) => [one.line, one]),
  );
  const lines = [...all.values()].filter((_, i) => i % of === part - 1);
  let played = 0;
  const { heard, moved } = await hearWhileShut(lines, (taken) => {
    for (const told of taken) process.stderr.write(`${told}\n`);
    if (++played % TELL_EVERY === 0) process.stderr.write(`${played} of ${lines.length} played\n`);
  });
  const figure = (name: string, value: number) => ({
    name: `own lines: ${name}`,
    value,
    unit: 'lines',
    target: 0,
  });
  return [
    { name: 'own lines: played', value: lines.length, unit: 'lines' },
    figure('that broke into themselves', heard.length),
    figure('that moved the flow', moved.length),
  ];
}
