import { describe, expect, it } from 'vitest';
import { hear, type RunState } from '../../../src/bench/index.ts';
import type { FlowEvent } from '../../../src/flow/index.ts';
import { factKeys } from '../../../src/screens/bench/fact-keys.ts';
import { type KeySituation, meaningOfKey } from '../../../src/screens/bench/keys.ts';
import { type Scene, sceneOf, wordOf } from '../../../src/screens/bench/scene.ts';
import { situationOf } from '../../../src/screens/bench/situation.ts';
import { begun, heardAs } from '../../bench/scripted.ts';
import { rightEvent } from '../../flow/right-walk.ts';

const quiet: KeySituation = {
  held: false,
  numberUnit: null,
  waiting: false,
  typed: '',
  choices: [],
  facts: new Map(),
};
const measuring = { ...quiet, numberUnit: 'mm' };
const says = (word: string) => ({ kind: 'say', word });
const types = (typed: string) => ({ kind: 'type', typed });

describe('a key', () => {
  it.each([
    [' ', quiet, says('next')],
    ['Enter', quiet, says('next')],
    [' ', { ...quiet, held: true }, says('carry on')],
    ['n', quiet, says('next')],
    ['N', { ...quiet, held: true }, says('carry on')],
    ['r', quiet, says('repeat')],
    ['W', quiet, says('why')],
    ['b', quiet, says('back')],
    ['h', quiet, says('hold')],
    ['s', quiet, says('stop')],
    ['?', quiet, says('what can i say')],
    ['i', quiet, says('where am i')],
    ['p', quiet, says('speed')],
    ['l', quiet, says('how much is left')],
    ['x', quiet, says('wrong')],
    ['g', { ...quiet, facts: new Map([['g', 'guard closed']]) }, says('guard closed')],
    ['2', { ...quiet, choices: ['card agrees', 'card differs'] }, says('card differs')],
    ['c', { ...measuring, waiting: true }, says('correct')],
    ['k', { ...measuring, waiting: true }, says('keep')],
    ['2', measuring, types('2')],
    ['.', { ...measuring, typed: '24' }, types('24.')],
    [',', { ...measuring, typed: '24' }, types('24.')],
    ['Backspace', { ...measuring, typed: '24.9' }, types('24.')],
    ['Escape', { ...measuring, typed: '24.9' }, types('')],
    ['Enter', { ...measuring, typed: '24.9' }, { kind: 'take' }],
    [' ', { ...measuring, numberUnit: 'in', typed: '1' }, types('1 ')],
  ] as const)('%s means what it says', (key, now, meaning) => {
    expect(meaningOfKey(key, now)).toEqual(meaning);
  });

  it.each([
    ['z', quiet],
    ['y', quiet],
    ['n', { ...measuring, typed: '24.9' }],
    ['n', { ...measuring, waiting: true }],
    ['c', quiet],
    ['k', quiet],
    ['1', quiet],
    [' ', { ...measuring, waiting: true }],
    ['Enter', { ...measuring, waiting: true }],
    ['Tab', quiet],
    ['F5', quiet],
  ] as const)('%s means nothing where nothing asks for it', (key, now) => {
    expect(meaningOfKey(key, now)).toBeNull();
  });

  it.each([
    ['.', '2.5'],
    ['-', '2'],
    ['/', ''],
    ['1', '123456789012'],
  ])('%s after "%s" is a slip and changes nothing', (key, typed) => {
    expect(meaningOfKey(key, { ...measuring, typed })).toEqual(types(typed));
  });
});

/** Presses keys until the job ends, each time one that leads on; the space bar is tried everywhere on the way. */
describe('through the whole job', () => {
  const keys = factKeys(begun().state.job.flow.kind.facts);
  const turns = 400;

  it('the space bar alone answers no gate, no choice and no reading, and keys do all of it', () => {
    let { state } = begun();
    for (let turn = 0; turn < turns && state.snapshot.status === 'active'; turn++) {
      const scene = sceneOf(state);
      const now = situationOf(scene, '', keys);
      const footSwitch = meaningOfKey(' ', now);
      expect([null, 'next', 'carry on']).toContain(
        footSwitch?.kind === 'say' ? footSwitch.word : footSwitch,
      );
      const answers = scene.list.items.filter((item) => item.strict).map(wordOf);
      if (footSwitch?.kind === 'say') expect(answers).not.toContain(footSwitch.word);
      const word = wayOn(scene, now, state);
      state = hear(state, heardAs(word)).state;
    }
    expect(state.snapshot.status).toBe('done');
  });

  function wayOn(scene: Scene, now: KeySituation, { job, snapshot }: RunState): string {
    if (scene.waiting) return said(scene.waiting.far ? 'k' : 'c', now);
    if (scene.list.number) return size(rightEvent(job, snapshot), scene.list.number.decimals);
    const [fact] = [...now.facts.keys()];
    return said(fact ?? (now.choices.length > 0 ? '1' : ' '), now);
  }

  function size(event: FlowEvent, decimals: number): string {
    if (event.type !== 'reading') throw new Error('A size is asked for, and none would be right.');
    return event.value.toFixed(decimals);
  }

  function said(key: string, now: KeySituation): string {
    const meaning = meaningOfKey(key, now);
    if (meaning?.kind !== 'say') throw new Error(`The key ${key} says nothing here.`);
    return meaning.word;
  }
});
