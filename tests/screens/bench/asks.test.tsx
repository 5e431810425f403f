import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Notice } from '../../../src/bench/index.ts';
import { Asks } from '../../../src/screens/bench/Asks.tsx';
import { sceneOf } from '../../../src/screens/bench/scene.ts';
import { begun, hears } from '../../bench/scripted.ts';

const keysOnly: Notice = { sound: 'deaf', trouble: null, advice: null, level: null };
const withEar: Notice = { ...keysOnly, sound: 'listening', soundLeaves: 'no' };

function shown(notice: Notice, hearsFreely = false): string {
  const state = { ...hears(begun(), 'next').state, hearsFreely };
  const nothing = () => {};
  return render(
    <Asks scene={sceneOf(state)} state={state} notice={notice} say={nothing} onGiveUp={nothing} />,
  );
}

const lead = 'First say “other words”:';

describe('the questions under a step', () => {
  it('stand behind the word that opens them, where the ear in use knows listed words alone', () => {
    const [atOnce = '', behind = ''] = shown(withEar).split(lead);
    expect(atOnce).toContain('Repeat');
    expect(atOnce).not.toContain('Where am');
    expect(behind).toContain('Where am');
  });

  it('stand alike for an ear that hears freely, and with keys alone', () => {
    expect(shown(withEar, true)).not.toContain(lead);
    expect(shown(keysOnly)).not.toContain(lead);
    expect(shown(keysOnly)).toContain('Where am');
  });
});
