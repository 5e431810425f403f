import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Notice } from '../../../src/bench/index.ts';
import { Trouble } from '../../../src/screens/bench/BenchHead.tsx';

const notice: Notice = { sound: 'listening', trouble: null, advice: null, level: null };
const told = (more: Partial<Notice>) => render(<Trouble notice={{ ...notice, ...more }} />);

describe('what the Bench tells of its ear', () => {
  it('names the words that it cannot hear, and the way round', () => {
    expect(told({ unpronounced: ['burr', 'quill'] })).toContain(
      'Sound stays on this device. The ear of this page cannot hear: burr, quill. Use the keys for these.',
    );
  });

  it('is where the sound goes alone when it can hear all', () => {
    expect(told({})).not.toContain('cannot hear');
    expect(told({ soundLeaves: 'yes' })).toContain('Sound leaves this device.');
  });
});
