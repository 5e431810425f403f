import { describe, expect, test } from 'vitest';
import { begun, hears, toBar, toFirstGate } from './scripted.ts';

const bar = hears(begun(), ...toBar);
const gate = hears(bar, ...toFirstGate);

describe('"why that" about a number that was questioned or refused', () => {
  test('a far reading tells what was expected, and by whom', () => {
    const far = hears(bar, '27');
    expect(far.line).toMatch(/Expected near twenty-five/);
    expect(hears(far, 'why that').line).toMatch(/^Expected twenty-five.*Source: /);
  });

  test('a reading that cannot be tells what the bound comes from', () => {
    const wild = hears(bar, '900');
    expect(wild.line).toMatch(/must be between/);
    expect(hears(wild, 'why that').line).toMatch(/^Most that is possible .*Source: /);
  });

  test('a speed above the mark of the chuck tells whose limit it is', () => {
    const fast = hears(gate, 'running one thousand nine hundred');
    expect(fast.line).toMatch(/^The chuck's mark is one thousand six hundred/);
    expect(hears(fast, 'why that').line).toMatch(/Source: Yard lathe, metric\.$/);
  });

  test('is about the last figure of the line that stands when none was asked for', () => {
    const told = hears(gate, 'tool clear');
    expect(told.line).toMatch(/three hundred/);
    expect(hears(told, 'why that').line).toMatch(/^Speed three hundred: from /);
  });
});
