import { describe, expect, test } from 'vitest';
import { beginJob, figuresNow, positionOf } from '../../src/flow/index.ts';
import { walkRight } from './right-walk.ts';
import { cardNamed, cut, hingePin, jobOf, smallFlow } from './shipped.ts';
import { answerAll, walkFrom } from './walk.ts';

describe('the figures of a pass', () => {
  const job = jobOf(hingePin(), {}, cardNamed('inch-lathe'));
  const dials = walkRight(job)
    .filter((at) => positionOf(at).step === 'turn-shank' && positionOf(at).phase === 'dial')
    .map((at) => figuresNow(job, at));
  const textsOf = (id: string) =>
    dials.map((figures) => figures.find((one) => one.id === id)?.text.replace('\u00A0', ' '));

  test('tell the dial to the thousandth, and to half of one where it is split', () => {
    // From 0.984 in to the middle of 16 h9, 0.62907 in, on a radius dial: 0.355 in left. Less 0.5 mm (0.0197) for the
    // last cut, 0.1676 a side in three cuts of 0.0559: down to 0.055. Then 0.874: 0.1126 in two, 0.056. Then 0.762:
    // 0.0566 in one, 0.056. Then 0.650: 0.0105 to go, down to 0.010, which leaves 0.630 in = 16.002 mm, over
    // 16 mm; half a thousandth more leaves 0.629 in = 15.977 mm, within 15.957 to 16.
    expect(textsOf('dial')).toEqual(['0.055 in', '0.111 in', '0.167 in', '0.1775 in']);
    expect(textsOf('cut')).toEqual(['0.055 in', '0.056 in', '0.056 in', '0.0105 in']);
  });
});

describe('the figures of a cut', () => {
  const more = { depth: { is: 0.5, unit: 'mm' }, feed: { is: 0.2, unit: 'mm/rev' } };
  const job = (card: 'metric-lathe' | 'inch-lathe') =>
    jobOf(smallFlow([cut('face', more)]), {}, cardNamed(card));
  const told = (card: 'metric-lathe' | 'inch-lathe') => {
    const made = job(card);
    return figuresNow(made, answerAll(made, walkFrom(made)).snapshot).map(
      ({ label, text }) => `${label} ${text.replace('\u00A0', ' ')}`,
    );
  };

  test('stand in the units of the machine, constants too', () => {
    // 0.5 mm ÷ 25.4 = 0.0197 in, shown to the thousandth; 0.2 ÷ 25.4 = 0.0079 in.
    expect(told('metric-lathe')).toEqual(['Speed 300 rpm', 'Feed 0.2 mm/rev', 'Depth 0.5 mm']);
    expect(told('inch-lathe')).toEqual(['Speed 300 rpm', 'Feed 0.0079 in/rev', 'Depth 0.020 in']);
  });

  test('are there before anything is answered', () => {
    const made = job('metric-lathe');
    expect(figuresNow(made, beginJob(made))).toHaveLength(3);
  });
});

describe('what stands behind a figure', () => {
  test.each(['metric-lathe', 'inch-lathe'] as const)(
    'is told for every figure of the whole job on the %s: working and source',
    (card) => {
      const job = jobOf(hingePin(), {}, cardNamed(card));
      const figures = walkRight(job).flatMap((at) => figuresNow(job, at));
      expect(figures.length).toBeGreaterThan(50);
      expect(figures.filter((one) => !one.working || !one.source)).toEqual([]);
    },
  );

  test('names what went in, under the words of the flow, and the formula', () => {
    const job = jobOf(hingePin(), {}, cardNamed('metric-lathe'));
    const speed = walkRight(job)
      .filter((at) => positionOf(at).step === 'face')
      .flatMap((at) => figuresNow(job, at))
      .find((one) => one.id === 'speed');
    expect(
      speed?.given?.map(({ label, text }) => `${label} ${text.replace('\u00A0', ' ')}`),
    ).toEqual(['Bar diameter 25.00 mm', 'Surface speed, facing 28 m/min']);
    expect(speed?.formula).toContain('1000 v');
    expect(speed?.ruledBy).toBe('the surface speed');
  });
});
