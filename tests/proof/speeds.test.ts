import { describe, expect, it } from 'vitest';
import { compileJob, type Job, readFlow } from '../../src/flow/index.ts';
import { Ids } from '../../src/proof/ids.ts';
import { Memory, prove } from '../../src/proof/index.ts';
import { NamedSpeeds } from '../../src/proof/speeds.ts';
import { Walk } from '../../src/proof/walk.ts';
import { cardNamed, kinds, textOf } from '../flow/shipped.ts';
import { cut, framesOf, step, tinyJob } from './tiny-walk.ts';

const last = step('last', {});
const shape = (ids: Ids, rpm: number) =>
  framesOf(tinyJob(cut('turn', rpm), last), ids)('turn').shape;

describe('speeds', () => {
  it('are called in the order in which they come, and one speed by one name', () => {
    const speeds = new NamedSpeeds();
    speeds.nameAll(tinyJob(cut('a', 300), cut('b', 460), cut('c', 300)));
    expect([300, 460, 100].map((speed) => speeds.nameOf(speed))).toEqual([
      'speed 0',
      'speed 1',
      'speed 2',
    ]);
    expect(speeds.speedOf('speed 1')).toBe(460);
  });

  it('that are those of other jobs alone are the same as none', () => {
    expect(new NamedSpeeds().speedOf('speed 0')).toBeNaN();
  });

  it('give a cut another shape where one is too fast for the chuck', () => {
    const ids = new Ids();
    // The chuck of the first card is for 1200 rev/min.
    expect(shape(ids, 1300)).not.toBe(shape(ids, 1100));
  });
});

describe('the hinge pin on a second card', () => {
  const jobOn = (card: Parameters<typeof cardNamed>[0]): Job => {
    const read = readFlow('a.json', textOf('gate-hinge-pin.json'), kinds);
    const made = read.ok ? compileJob(read.flow, cardNamed(card)) : undefined;
    if (!made?.ok) throw new Error('The hinge pin makes no job.');
    return made.job;
  };

  it('is proved by what was seen on the first, though every speed is another', () => {
    const memory = new Memory();
    const [inch, metric] = [jobOn('inch-lathe'), jobOn('metric-lathe')];
    const first = prove(inch, { memory });
    const second = prove(metric, { memory });
    expect(second.transitions).toBeLessThan(first.transitions / 4);
    expect([second.verdict, second.states]).toEqual(['proved', first.states]);
  }, 60_000);
});

describe('a speed that is not known to be set', () => {
  it('stands in no row: nothing of a cut goes back through the steps before', () => {
    const walk = new Walk(tinyJob(step('first', {}), cut('turn', 300), last));
    walk.run();
    const { speed, facts } = walk.room.variables;
    const set = facts.find(({ key }) => key === 'speed');
    if (!set) throw new Error('The fact of the speed');
    const held = ['first', 'turn', 'last'].flatMap((id) =>
      [...walk.rowsIn(id).values()].flatMap((rows) =>
        walk.sets.valuesAt(walk.sets.where(rows, set.level, 0), speed.level),
      ),
    );
    expect(new Set(held)).toEqual(new Set([0]));
  });
});
