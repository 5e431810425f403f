import { describe, expect, test } from 'vitest';
import { saidList, viewOf } from '../../src/flow/index.ts';
import { cut, inspect, jobOf, passes, smallFlow, tell } from './shipped.ts';
import { answerAll, said, walkFrom } from './walk.ts';

const wordsAt = (
  job: Parameters<typeof saidList>[0],
  walk: { snapshot: Parameters<typeof saidList>[1] },
) => saidList(job, walk.snapshot).items.map((item) => item.phrases[0]);

describe('a gate', () => {
  const job = jobOf(smallFlow([tell('begin'), cut('face'), tell('after')]));
  const gate = said(job, walkFrom(job), 'next');

  test('holds until each fact is answered by its own word', () => {
    expect(gate.at).toBe('face/gate');
    expect(said(job, gate, 'next').at).toBe('face/gate');
    const [last] = ['hands clear'];
    const almost = said(
      job,
      gate,
      'glasses on',
      'nothing loose',
      'stop released',
      'spindle stopped',
      'work clamped',
      'key out',
      'turns free',
      'tool locked',
      'tool clear',
      'speed set',
      'guard closed',
    );
    expect(almost.at).toBe('face/gate');
    expect(said(job, almost, last ?? '').at).toBe('face/start');
  });

  test('takes no answer that was not asked for', () => {
    expect(said(job, gate, 'guard=open').snapshot.context.facts.guard).toBe('open');
    expect(said(job, gate, 'tailstock=back').snapshot.context.facts.tailstock).toBe('unknown');
  });

  test('asks again for what was lost while nothing turns, without a hold', () => {
    const ready = said(job, gate, 'glasses on', 'guard closed', 'guard open');
    expect(ready.at).toBe('face/gate');
    expect(wordsAt(job, ready)).toContain('guard closed');
  });

  test('is asked in the order of the machine kind, the speed in words of this machine', () => {
    const view = viewOf(
      job,
      said(
        job,
        gate,
        'glasses on',
        'nothing loose',
        'stop released',
        'spindle stopped',
        'work clamped',
        'key out',
        'turns free',
        'tool locked',
        'tool clear',
      ).snapshot,
    );
    expect(view.ask.spoken).toBe('Set the spindle to three hundred. Say speed set.');
  });
});

describe('a cut', () => {
  const job = jobOf(smallFlow([cut('face'), tell('after')]));
  const start = answerAll(job, walkFrom(job));
  const cutting = said(job, start, 'spindle running');

  test('starts, is watched, and ends only when the tool is clear and the spindle stopped', () => {
    expect(start.at).toBe('face/start');
    expect(cutting.at).toBe('face/cutting');
    expect(said(job, cutting, 'next').at).toBe('face/cutting');
    const clear = said(job, cutting, 'tool clear');
    expect(clear.at).toBe('face/stopping');
    expect(said(job, clear, 'next').at).toBe('face/stopping');
    expect(said(job, clear, 'spindle stopped').at).toBe('after/open');
  });

  test.each([
    ['the guard opens', 'guard=open', 'guard'],
    ['the emergency stop is pressed', 'emergency-stop=pressed', 'emergency-stop'],
    ['the key is back in the chuck', 'chuck-key=in', 'chuck-key'],
    ['the work comes loose', 'work=loose', 'work'],
    ['the spindle stops by itself', 'spindle=stopped', undefined],
  ])('does not go on when %s', (_, loss, lost) => {
    const after = said(job, cutting, loss);
    if (lost === undefined) {
      expect(after.at).toBe('face/cutting');
      return;
    }
    expect(after.at).toBe('face/hold');
    expect(after.snapshot.context.held?.lost).toEqual([lost]);
  });

  test('held, asks first and alone that the spindle stands still', () => {
    const held = said(job, cutting, 'guard=open');
    expect(
      saidList(job, held.snapshot)
        .items.filter((item) => item.kind === 'fact')
        .map((item) => item.phrases[0]),
    ).toEqual(['spindle stopped']);
    expect(said(job, held, 'guard=closed').snapshot.context.facts.guard).toBe('open');
  });

  test('comes back to the same step once what it needs is answered again', () => {
    const held = said(job, cutting, 'guard=open', 'spindle stopped');
    expect(said(job, held, 'carry on').at).toBe('face/hold');
    const answered = answerAll(job, held);
    expect(answered.at).toBe('face/hold');
    expect(said(job, answered, 'carry on').at).toBe('face/start');
  });

  test('on stop, doubts the power, the tool and the emergency stop', () => {
    const { facts } = said(job, cutting, 'stop').snapshot.context;
    expect([facts.spindle, facts['tool-place'], facts['emergency-stop']]).toEqual([
      'unknown',
      'unknown',
      'unknown',
    ]);
  });

  test('after a break asks for everything anew', () => {
    const back = said(job, cutting, 'interrupted');
    expect(back.at).toBe('face/hold');
    expect(new Set(Object.values(back.snapshot.context.facts))).toEqual(new Set(['unknown']));
  });
});

describe('it will not start', () => {
  const job = jobOf(smallFlow([cut('face'), tell('after')]));
  const walk = said(job, answerAll(job, walkFrom(job)), 'will not start');

  test('asks for a standing spindle before hands go near', () => {
    expect(walk.at).toBe('face/will-not-start.settle');
    expect(said(job, walk, 'spindle stopped').at).toBe('face/will-not-start.selector-off');
  });

  test('goes through every cause and returns to the gate', () => {
    let at = said(job, walk, 'spindle stopped', 'next');
    expect(at.at).toBe('face/will-not-start.guard-switch');
    expect(said(job, at, 'next').at).toBe('face/will-not-start.guard-switch');
    at = said(job, at, 'guard closed', 'next', 'stop released', 'next', 'next', 'next');
    expect(at.at).toBe('face/will-not-start.overload');
    expect(said(job, at, 'next').at).toBe('face/gate');
  });

  test('can be left as soon as the cause is found', () => {
    expect(said(job, walk, 'spindle stopped', 'carry on').at).toBe('face/gate');
  });

  test('holds when the spindle starts by itself', () => {
    expect(said(job, walk, 'spindle stopped', 'spindle=running').at).toBe('face/hold');
  });
});

describe('passes', () => {
  const job = jobOf(smallFlow([passes('turn'), tell('good'), tell('bad')]));
  const onePass = (at: ReturnType<typeof walkFrom>) =>
    said(
      job,
      said(job, answerAll(job, at), 'next'),
      'spindle running',
      'tool clear',
      'spindle stopped',
    );
  const measured = onePass(walkFrom(job));

  test('cut, measure, and work out the next dial setting until the size is made', () => {
    expect(measured.at).toBe('turn/measure');
    const next = said(job, measured, 22.8);
    expect(next.at).toBe('turn/gate');
    // 25 → 20 in mm on the diameter, deepest 1 a side, 0.5 left for the last: 4.5/2 = 2.25 a side in
    // three equal cuts of 0.75; the diameter dial reads 1.50 after the first.
    expect(next.snapshot.context.passes.turn).toEqual({ size: 22.8, dial: expect.closeTo(1.5, 9) });
    expect(said(job, onePass(next), 20.05).at).toBe('good/open');
  });

  test('a pass too deep is lost and leads somewhere', () => {
    expect(said(job, measured, 19.8).at).toBe('end/end');
  });

  test.each([4.99, 41.01, Number.NaN, Number.POSITIVE_INFINITY])(
    'a reading of %s is not taken',
    (value) => {
      expect(said(job, measured, value).at).toBe('turn/measure');
    },
  );

  test('held while measuring, comes back to the measuring', () => {
    const held = said(job, measured, 'hold', 'carry on');
    expect(held.at).toBe('turn/measure');
  });

  test('after measuring, the guard and the hands are asked for again', () => {
    expect(wordsAt(job, said(job, measured, 22.8))).toEqual(
      expect.arrayContaining(['guard closed', 'hands clear']),
    );
  });
});

describe('an inspection', () => {
  const job = jobOf(
    smallFlow([
      inspect('check', { within: 'good', rework: 'more', lost: 'scrap' }),
      tell('good'),
      tell('more'),
      tell('scrap'),
    ]),
  );
  const open = said(job, walkFrom(job), 'spindle stopped');

  test.each([
    [20.1, 'good/open'],
    [19.9, 'good/open'],
    [20.11, 'more/open'],
    [19.89, 'scrap/open'],
  ])('of an outside size of %s goes to %s', (size, at) => {
    expect(said(job, open, size).at).toBe(at);
  });

  test('of an inside size goes the other way round', () => {
    const inside = jobOf(
      smallFlow([
        inspect('check', { side: 'inside', within: 'good', rework: 'more', lost: 'scrap' }),
        tell('good'),
        tell('more'),
        tell('scrap'),
      ]),
    );
    const at = said(inside, walkFrom(inside), 'spindle stopped');
    expect(said(inside, at, 20.2).at).toBe('scrap/open');
    expect(said(inside, at, 19.8).at).toBe('more/open');
  });

  test('holds when the spindle is reported running while hands are in', () => {
    expect(said(job, open, 'spindle=running').at).toBe('check/hold');
  });
});

describe('back', () => {
  test('goes to the last step that every path goes through, and nothing done since is known', () => {
    const job = jobOf(
      smallFlow([
        { kind: 'check', id: 'look', title: 'Look', say: 'Look.', facts: { guard: 'closed' } },
        {
          kind: 'choose',
          id: 'which',
          title: 'Which',
          say: 'Which?',
          options: [
            { id: 'a', word: 'this way', next: 'left' },
            { id: 'b', word: 'that way', next: 'right' },
          ],
        },
        tell('left', { next: 'meet' }),
        {
          kind: 'do',
          id: 'right',
          title: 'Right',
          say: 'Lock it.',
          ends: { 'tool-lock': 'locked' },
        },
        tell('meet'),
      ]),
    );
    const meet = said(job, walkFrom(job), 'guard closed', 'that way', 'tool locked');
    expect(meet.at).toBe('meet/open');
    expect(meet.snapshot.context.facts['tool-lock']).toBe('locked');
    const back = said(job, meet, 'back');
    expect(back.at).toBe('which/open');
    expect(back.snapshot.context.facts['tool-lock']).toBe('unknown');
    expect(back.snapshot.context.facts.guard).toBe('closed');
  });
});

test('after the walk, hands and guard are asked for again, since hands were near', () => {
  const job = jobOf(smallFlow([cut('face'), tell('after')]));
  const walk = said(job, answerAll(job, walkFrom(job)), 'will not start', 'spindle stopped');
  expect(wordsAt(job, said(job, walk, 'carry on'))).toEqual(
    expect.arrayContaining(['guard closed', 'hands clear']),
  );
});
