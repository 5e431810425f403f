/** The paces of a run: what is said differs, what is asked never does. */

import { array, assert, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beginRun, comeBack, hear, replayRun, saidNow, viewNow } from '../../src/bench/index.ts';
import { askedFacts, type Pace, paces } from '../../src/flow/index.ts';
import { wholeJob } from '../browser/hinge-pin.ts';
import {
  begun,
  head,
  heardAs,
  hears,
  shippedJob,
  type Turn,
  throughGate,
  toBar,
  toFirstGate,
} from './scripted.ts';

const job = shippedJob();

function begunAt(pace: Pace): Turn {
  const { state, effects } = beginRun(job, { ...head, pace });
  const [say] = effects.flatMap((effect) => (effect.kind === 'say' ? [effect.line] : []));
  return { ...begun(), state, line: say ?? '' };
}

/** A question of the first-time pace is left unanswered; any other word is said as it is. */
function saysTo(turn: Turn, word: string): Turn {
  return hears(turn.state.question ? hears(turn, 'pass on') : turn, word);
}

const lastLines = (pace: Pace, ...words: readonly string[]) => {
  let turn = begunAt(pace);
  const lines = [turn.line];
  for (const word of words) {
    turn = saysTo(turn, word);
    lines.push(turn.line);
  }
  return lines;
};

describe('the pace of a run', () => {
  it('never takes a gate away: the same words come to the same state at every pace', () => {
    const word = integer({ min: 0, max: 10_000 });
    assert(
      property(array(word, { minLength: 8, maxLength: 25 }), (picks) => {
        let runs = paces.map(begunAt);
        for (const pick of picks) {
          const said = wordAt(runs[1]?.state ?? begun().state, pick);
          runs = runs.map((turn) => saysTo(turn, said));
          const states = runs.map(({ state }) => ({
            value: state.snapshot.value,
            context: state.snapshot.context,
          }));
          expect(states[0]).toEqual(states[1]);
          expect(states[2]).toEqual(states[1]);
        }
      }),
      { seed: 6, numRuns: 5 },
    );
  }, 60_000);

  it('names at own pace every condition that is open, in one breath', () => {
    const [, , , , , , ...gate] = [...toBar, ...toFirstGate];
    expect(gate.length).toBeGreaterThan(0);
    const turn = [...toBar, ...toFirstGate].reduce(saysTo, begunAt('own-pace'));
    const names = askedFacts(turn.state.job, turn.state.snapshot)
      .filter(({ fact }) => fact.id !== 'speed')
      .map(({ fact }) => fact.short);
    expect(names).toEqual(['tool clear', 'guard', 'hands']);
    expect(viewNow(turn.state).ask.spoken).toBe('Tool clear, guard, hands? Speed three hundred.');
  });

  it('lets at own pace each condition be answered by its own word, and says nothing between', () => {
    const turn = [...toBar, ...toFirstGate].reduce(saysTo, begunAt('own-pace'));
    expect(hears(turn, 'next').at).toBe('face/gate');
    expect(hears(turn, 'yes').at).toBe('face/gate');
    expect(hears(turn, 'next').line).toBe('Not yet: tool place, speed, guard and hands.');
    const [clear, set, closed] = throughGate.map((_, index) =>
      hears(turn, ...throughGate.slice(0, index + 1)),
    );
    expect([clear?.line, set?.line, closed?.line]).toEqual(['', '', '']);
    expect(hears(turn, ...throughGate).line).toBe('Start.');
  });

  it('gives at the first-time pace each reason once, and the word that answers', () => {
    const lines = lastLines('first-time', 'next', 'glasses on');
    expect(lines[0]).toContain('A trained person decides who may start.');
    expect(lines[1]).toContain('a chuck winds in whatever hangs loose');
    expect(lines[1]).toContain('Is your eye protection on? Say glasses on.');
    expect(lines[2]).not.toContain('a chuck winds in whatever hangs loose');
    expect(lines[2]).toContain('Say nothing loose.');
  });

  it('is not changed for who is familiar: no reason and no question', () => {
    const turn = [...toBar, ...toFirstGate].reduce(saysTo, begunAt('familiar'));
    expect(turn.state.explained).toEqual([]);
    expect(turn.state.question).toBeNull();
    expect(begun().line).toBe(begunAt('familiar').line);
  });

  it('is changed by a word at any moment, kept, and comes back with the run', () => {
    const turn = hears(begun(), 'own pace');
    expect(turn.state.pace).toBe('own-pace');
    expect(turn.entries.at(-1)).toMatchObject({
      event: { type: 'pace', pace: 'own-pace' },
      outcome: 'note',
    });
    const back = replayRun(job, head, turn.entries);
    expect(back).toMatchObject({ ok: true, state: { pace: 'own-pace', seq: 1 } });
    expect(back.ok && comeBack(back.state, 5_000).state.pace).toBe('own-pace');
  });

  it('goes one step to less or more on "shorter" and "longer", and no further', () => {
    const pace = (...words: readonly string[]) => hears(begun(), ...words).state.pace;
    expect(pace('shorter')).toBe('own-pace');
    expect(pace('shorter', 'shorter')).toBe('own-pace');
    expect(pace('longer')).toBe('first-time');
    expect(pace('longer', 'longer', 'shorter')).toBe('familiar');
    expect(hears(begun(), 'familiar').line).toBe('Familiar already.');
  });

  it('comes back from its entries with the same reasons given and the same question waiting', () => {
    const first = { ...head, pace: 'first-time' as const };
    const words = ['next', 'glasses on', 'nothing loose', 'the spindle'];
    const turn = words.reduce<Turn>((now, word) => hears(now, word), begunAt('first-time'));
    const back = replayRun(job, first, turn.entries);
    if (!back.ok) throw new Error(back.fault);
    expect(back.state.explained).toEqual(turn.state.explained);
    expect(back.state.question).toEqual(turn.state.question);
    expect(back.state.lastLine).toBe(turn.state.lastLine);
  });
});

describe('the whole hinge pin', () => {
  const told = (pace: Pace) => {
    let turn = begunAt(pace);
    const lines = [turn.line];
    const steps = new Set<string>();
    for (const word of wholeJob) {
      steps.add(turn.at.split('/')[0] ?? '');
      if (turn.state.question) turn = hears(turn, 'pass on');
      turn = hears(turn, word);
      lines.push(turn.line);
    }
    expect(turn.at).toBe('end/end');
    return { lines, steps: [...steps].flatMap((id) => job.flow.steps.get(id) ?? []) };
  };
  const reasons = [...job.flow.steps.values(), ...job.flow.kind.facts].flatMap(
    ({ why }) => why ?? [],
  );

  it('tells at the first-time pace what each of its steps is for, once, on coming to it', () => {
    const { lines, steps } = told('first-time');
    expect(steps.length).toBeGreaterThan(30);
    const all = lines.join(' ');
    const untold = steps.filter(({ why }) => why === undefined || !all.includes(why));
    expect(untold.map(({ id }) => id)).toEqual([]);
  });

  it('is at own pace figures and gates: no reason, no word to say, no line over twelve words', () => {
    const { lines } = told('own-pace');
    const needless = lines.filter(
      (line) =>
        line.split(' ').length > 12 ||
        /\bsay\b/i.test(line) ||
        reasons.some((why) => line.includes(why)),
    );
    expect(needless).toEqual([]);
  });
});

/** A word that counts where a run stands, or one that does not. */
function wordAt(state: Turn['state'], pick: number): string {
  const { items, number } = saidNow(state);
  const words = items
    .filter(({ kind }) => kind !== 'ask' && kind !== 'question')
    .map(({ phrases }) => phrases[0] ?? '');
  const size = number ? [String(number.expected ?? (number.min + number.max) / 2), 'correct'] : [];
  const all = [...words, ...size, ...size, ...size, 'yes', 'guard closed'];
  return all[pick % all.length] ?? 'next';
}

it('a word that is refused at one pace is refused at all', () => {
  for (const pace of paces) {
    const step = hear(begunAt(pace).state, heardAs('guard closed'));
    expect(step.effects[0]).toMatchObject({ kind: 'append', entry: { outcome: 'refused' } });
  }
});
