import { describe, expect, it } from 'vitest';
import { readFlow, releaseFirst } from '../../src/flow/index.ts';
import { cut, flowWith, kinds, tell, textOf } from './shipped.ts';

const released = (text: string) => {
  const read = readFlow('flow', releaseFirst(text), kinds);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.flow.file.steps.filter((step) => step.release).map(({ id }) => id);
};

describe('a release before the first cut', () => {
  it('stands at the first cut of the hinge pin, and nowhere else', () => {
    expect(released(textOf('gate-hinge-pin.json'))).toEqual(['face']);
  });

  it('stands at each cut that can be the first', () => {
    const either = {
      ...{ kind: 'choose', id: 'which', title: 'Which', say: 'Which end?' },
      options: [
        { id: 'left', word: 'left end', next: 'left' },
        { id: 'right', word: 'right end', next: 'right' },
      ],
    };
    const steps = [tell('begin'), either, cut('left', { next: 'last' }), cut('right'), cut('last')];
    expect(released(JSON.stringify(flowWith(steps)))).toEqual(['left', 'right']);
  });

  it('changes nothing else in the file', () => {
    const text = textOf('gate-hinge-pin.json');
    const { steps, ...rest } = JSON.parse(releaseFirst(text));
    const { steps: before, ...others } = JSON.parse(text);
    expect(rest).toEqual(others);
    expect(steps.map(({ release: _, ...step }: { release?: true }) => step)).toEqual(before);
  });
});
