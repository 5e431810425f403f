/** The steps of a flow when all goes well, in order. Pure. */

import type { FlowFile, Step } from '../../flow/index.ts';

/** Step ids from the first to the end: first choice taken, every reading within. */
export function mainLine(file: FlowFile): readonly string[] {
  const line: string[] = [];
  const at = new Map(file.steps.map((step, index) => [step.id, index]));
  let step: Step | undefined = file.steps[0];
  // A step that comes twice closes a circle: the line ends there.
  while (step && !line.includes(step.id)) {
    line.push(step.id);
    const following: string | undefined = file.steps[(at.get(step.id) ?? 0) + 1]?.id;
    const next = nextOf(step) ?? following;
    step = next === undefined ? undefined : file.steps[at.get(next) ?? file.steps.length];
  }
  return line;
}

function nextOf(step: Step): string | undefined {
  if (step.kind === 'choose') return step.options[0]?.next;
  if (step.kind === 'inspect') return step.within;
  return step.next;
}
