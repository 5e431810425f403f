/** A machine kind of four facts: small enough to be walked situation by situation. */

import { type MachineKind, readKind } from '../../src/flow/index.ts';

const lossy = (id: string, good: string, bad: string, more: object = {}) => ({
  id,
  label: id,
  ask: `Is the ${id} ${good}?`,
  states: [
    { id: good, word: `${id.replace('-', ' ')} ${good}` },
    { id: bad, word: `${id.replace('-', ' ')} ${bad}`, loss: true },
  ],
  remedy: `See to the ${id}.`,
  ...more,
});

const never = (moment: string, fact: string, not: string) => ({
  all: [{ moment }, { fact, not }],
});

export const tinyFacts: Readonly<Record<string, readonly string[]>> = {
  motor: ['off', 'on'],
  tool: ['clear', 'touching'],
  guard: ['closed', 'open'],
  speed: ['set', 'other'],
};

const file = {
  followrest: 'machine-kind',
  version: 1,
  id: 'lathe',
  title: 'Tiny machine',
  facts: [
    lossy('motor', 'off', 'on'),
    lossy('tool', 'clear', 'touching'),
    lossy('guard', 'closed', 'open', { handsForget: true }),
    {
      ...lossy('speed', 'set', 'other'),
      states: [
        { id: 'set', word: 'speed set' },
        { id: 'other', word: 'speed other' },
      ],
    },
  ],
  roles: {
    power: { fact: 'motor', on: 'on', off: 'off' },
    tool: { fact: 'tool', clear: 'clear', touching: 'touching' },
    speed: { fact: 'speed', set: 'set' },
    stop: { fact: 'guard', released: 'closed', pressed: 'open' },
  },
  prompts: {
    setSpeed: 'Set {speed}.',
    start: 'Start.',
    watch: 'Watch.',
    stop: 'Stop it.',
    setDial: 'Set the dial to {dial}.',
    measure: 'Measure.',
    drill: 'Press stop.',
  },
  cautions: ['Take care.'],
  moments: ['reach'],
  hazards: [
    {
      id: 'TINY-GUARD',
      sentence: 'It never runs with the guard open.',
      never: never('turning', 'guard', 'closed'),
    },
    {
      id: 'TINY-HANDS',
      sentence: 'Hands are never in while it may run.',
      never: never('hands', 'motor', 'off'),
    },
    {
      id: 'TINY-TOUCH',
      sentence: 'It never starts with the tool touching.',
      never: never('start', 'tool', 'clear'),
    },
    {
      id: 'TINY-REACH',
      sentence: 'Nobody reaches in with the guard closed.',
      never: { all: [{ moment: 'reach' }, { fact: 'guard', is: 'closed' }] },
    },
    {
      id: 'TINY-CHUCK',
      sentence: 'It never runs faster than the chuck may.',
      never: { all: [{ moment: 'turning' }, { speedAbove: 'chuckLimit' }] },
    },
    {
      id: 'TINY-LEAVE',
      sentence: 'Nobody leaves it running.',
      never: never('end', 'motor', 'off'),
    },
  ],
  walks: [
    {
      id: 'stuck',
      title: 'Stuck',
      word: 'it is stuck',
      items: [{ id: 'look', title: 'Look', say: 'Look at the guard.', needs: { guard: 'closed' } }],
    },
  ],
  parts: [],
};

/** With `more` facts, that may be lost as well. */
export function tinyKind(more = 0): MachineKind {
  const others = Array.from({ length: more }, (_, at) =>
    lossy(`part-${'abcdefgh'[at]}`, 'in', 'out'),
  );
  const read = readKind('tiny', JSON.stringify({ ...file, facts: [...file.facts, ...others] }));
  if (!read.ok) throw new Error(read.faults.map((fault) => fault.message).join('\n'));
  return read.value;
}
