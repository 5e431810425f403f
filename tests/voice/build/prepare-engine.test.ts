import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { speechNotices } from '../../../src/voice/build/notices.ts';
import { prepareEngine } from '../../../src/voice/build/prepare-engine.ts';

it('the engine is made from the installed package, without the model we do not use', async () => {
  const folder = await prepareEngine();
  const script = readFileSync(join(folder, 'engine.mjs'), 'utf8');
  expect(script.length).toBeLessThan(250_000);
  expect(script).toMatch(/^export function startEngine/);
  const wasm = readFileSync(join(folder, 'engine.wasm'));
  expect(wasm.subarray(0, 4).toString('latin1')).toBe('\0asm');
});

it('the licence texts of all that is shipped are laid beside the page', () => {
  const text = speechNotices();
  for (const holder of [
    'Carnegie Mellon University',
    'Alpha Cephei',
    'Nagoya Institute of Technology',
    'The MIT license',
  ]) {
    expect(text.toLowerCase()).toContain(holder.toLowerCase());
  }
});
