import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { SoundGoes } from '../../../src/screens/slate/AskInWords.tsx';
import type { AppWorld, EarChoice } from '../../../src/screens/world.ts';

type Leaves = EarChoice['soundLeavesDevice'];

/** All that the line asks of the world. */
function worldWith(ear: string, choices: Readonly<Record<string, Leaves>>): AppWorld {
  const ears = Object.entries(choices).map(([id, soundLeavesDevice]) => ({
    ...{ id, name: id, about: '', soundLeavesDevice, needsFetching: false },
  }));
  return { settings: () => ({ ear }), ears: () => ears } as unknown as AppWorld;
}

const told = (world: AppWorld) => render(<SoundGoes world={world} />);

describe('the Slate that a question is said to', () => {
  it.each([
    ['no', 'Sound stays on this device.'],
    ['yes', 'Sound leaves this device.'],
    ['may', 'Sound may leave this device.'],
  ] as const)('tells where the sound goes with an ear that answers %s', (leaves, sentence) => {
    expect(told(worldWith('own', { auto: 'no', own: leaves }))).toContain(sentence);
  });

  it('tells it of the best where the one that was chosen is gone', () => {
    expect(told(worldWith('gone', { auto: 'no', other: 'yes' }))).toContain('stays');
  });

  it('tells nothing while it is not known what can listen', () => {
    expect(told(worldWith('own', {}))).toBe('');
  });
});
