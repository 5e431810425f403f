import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { Runs } from '../../../src/screens/logbook/Logbook.tsx';
import type { AppWorld } from '../../../src/screens/world.ts';
import { sampleRun } from '../../logbook/sample-run.ts';

/** All that the list asks of the world. */
const world = { operators: { all: () => [] } } as unknown as AppWorld;
const runs = ['one', 'two'].map((id) => sampleRun(id).head);

const shown = (props: Omit<Parameters<typeof Runs>[0], 'world' | 'operator'>, operator?: string) =>
  render(<Runs world={world} operator={operator} {...props} />);

describe('the Logbook', () => {
  it('shows the newest runs while older ones are read, and says so', () => {
    const page = shown({ runs, whole: false });
    expect(page.match(/class="run-row"/g)).toHaveLength(2);
    expect(page).toContain('Older runs are still being read. So far: 2 runs');
  });

  it('says how many there are when all are read', () => {
    const page = shown({ runs, whole: true });
    expect(page).toContain('>2 runs<');
    expect(page).not.toContain('still being read');
  });

  it('says that nothing is found only when all are read', () => {
    expect(shown({ runs, whole: false }, 'nobody')).toContain('still being read. So far: 0 runs');
    expect(shown({ runs, whole: true }, 'nobody')).toContain('>0 runs<');
  });
});
