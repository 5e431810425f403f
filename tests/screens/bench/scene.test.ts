import { describe, expect, it } from 'vitest';
import { sceneOf, wordOf } from '../../../src/screens/bench/scene.ts';
import { begun, hears, throughGate, toBar, toFirstGate } from '../../bench/scripted.ts';

const at = (...words: readonly string[]) => sceneOf(hears(begun(), ...words).state);
const cutting = [...toBar, ...toFirstGate, ...throughGate, 'spindle running'];

describe('the scene', () => {
  it('is laid out by what the person has to do', () => {
    expect(at().layout).toBe('doing');
    expect(at(...toBar).layout).toBe('measuring');
    expect(at(...toBar, ...toFirstGate).layout).toBe('gate');
    expect(at(...cutting).layout).toBe('cutting');
    expect(at(...cutting, 'guard open').layout).toBe('held');
  });

  it('is ready for the next word only when nothing is open', () => {
    expect(at()).toMatchObject({ ready: true, open: 0 });
    expect(at('next')).toMatchObject({ ready: false, open: 2 });
    expect(at('next', 'glasses on')).toMatchObject({ ready: false, open: 1 });
    expect(at(...toBar)).toMatchObject({ ready: false, open: 0 });
  });

  it('counts every fact of a hold that is to be answered again', () => {
    const held = at(...cutting, 'guard open');
    expect(held.gate.filter(({ met }) => !met).map(({ fact }) => fact)).toContain('guard');
    expect(held.open).toBe(held.gate.filter(({ met }) => !met).length);
  });

  it('shows the number that waits for its answer, and whether it is far', () => {
    expect(at(...toBar, '25.02').waiting).toEqual({
      value: 25.02,
      unit: 'mm',
      decimals: 2,
      far: false,
    });
    expect(at(...toBar, '31').waiting?.far).toBe(true);
    expect(at(...toBar, '31', 'wrong').waiting).toBeNull();
  });

  it('offers choices and losses, each by its word', () => {
    const choosing = at(...toBar.slice(0, -1));
    expect(choosing.choices.map(wordOf)).toEqual(['card agrees', 'card differs']);
    expect(at(...cutting).losses.map(wordOf)).toContain('guard open');
  });
});
