import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { repository } from '../../../src/cli/flow-files.ts';
import { picturePlace } from '../../../src/screens/bench/picture-place.ts';
import { sceneOf } from '../../../src/screens/bench/scene.ts';
import { TWO_COLUMNS } from '../../../src/screens/bench/use-one-column.ts';
import { begun, hears, throughGate, toBar, toFirstGate } from '../../bench/scripted.ts';

const gate = hears(begun(), ...toBar, ...toFirstGate);
const cutting = hears(gate, ...throughGate, 'spindle running');

describe('the picture of the machine', () => {
  it.each([
    ['while it tells', begun(), 'before-asks', 'before-asks'],
    ['while a size is measured', hears(begun(), ...toBar), 'below', 'before-asks'],
    ['at a gate', gate, 'below', 'before-asks'],
    ['while it is held', hears(cutting, 'guard open'), 'below', 'before-asks'],
    ['while it cuts', cutting, 'before-asks', 'before-asks'],
    [
      'while it cuts at first-time pace',
      hears(cutting, 'first time'),
      'before-asks',
      'before-asks',
    ],
    ['while it cuts at own pace', hears(cutting, 'own pace'), 'behind-asks', 'behind-asks'],
  ] as const)('%s stands in its place on two columns and on one', (_, turn, two, one) => {
    const scene = sceneOf(turn.state);
    expect([picturePlace(scene, false), picturePlace(scene, true)]).toEqual([two, one]);
  });

  it('goes by the condition under which the style sheet makes two columns', () => {
    const sheet = readFileSync(join(repository, 'src/screens/styles/bench.css'), 'utf8');
    const conditions = [...sheet.matchAll(/@media (.*min-width.*) \{/g)].map(([, one]) => one);
    expect(conditions.length).toBeGreaterThan(1);
    expect(new Set(conditions)).toEqual(new Set([TWO_COLUMNS]));
  });

  it('is none when the job is over: there the piece is shown', () => {
    expect(picturePlace({ layout: 'done', pace: 'familiar' }, true)).toBe('nowhere');
  });
});
