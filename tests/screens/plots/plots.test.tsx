import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { ControlChart } from '../../../src/screens/plots/ControlChart.tsx';
import { FinishPlot } from '../../../src/screens/plots/FinishPlot.tsx';
import { PassPlot } from '../../../src/screens/plots/PassPlot.tsx';
import { SpeedPlot } from '../../../src/screens/plots/SpeedPlot.tsx';
import { ToleranceBar } from '../../../src/screens/plots/ToleranceBar.tsx';

const speeds = [45, 70, 110, 175, 280, 450, 710, 1120, 1800];
const PLOTS: readonly (readonly [string, VNode])[] = [
  [
    'speed',
    <SpeedPlot
      key="s"
      title="Plot"
      surfaceSpeed={28}
      speeds={speeds}
      diameters={[5, 100]}
      diameter={25}
    />,
  ],
  ['pass', <PassPlot key="p" title="Plot" from={30} after={[27.5, 25]} finishing current={0} />],
  [
    'finish',
    <FinishPlot key="f" title="Plot" noseRadius={0.8} feeds={[0.1, 0.2]} wanted={1.6} feed={0.2} />,
  ],
  ['tolerance', <ToleranceBar key="t" title="Plot" lower={24.98} upper={25} side="outside" />],
  [
    'control',
    <ControlChart
      key="c"
      title="Plot"
      subgroups={[
        [1, 2],
        [2, 3],
      ]}
    />,
  ],
];

const told = (plot: VNode) => render(plot).match(/<desc>([^<]*)<\/desc>/)?.[1] ?? '';

describe.each(PLOTS)('the %s plot', (_, plot) => {
  it('is one image with a name and its figures in words', () => {
    const svg = render(plot);
    expect(svg).toMatch(/^<svg[^>]* role="img"/);
    expect(svg).toContain('<title>Plot</title>');
    expect(told(plot).length).toBeGreaterThan(15);
  });

  it('has no number that is none, and no colour of its own', () => {
    const svg = render(plot);
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    expect(svg).not.toMatch(/#[0-9a-f]{3,8}\b/i);
  });
});

describe('what is told', () => {
  it('by the speed plot: the speed to set, then each step', () => {
    expect(told(PLOTS[0]?.[1] ?? <i />)).toMatch(/^Ø25: set 280 rev\/min; Ø5–8: 1120 rev\/min;/);
  });

  it('by the pass plot: depth, diameter and state of each pass', () => {
    expect(told(PLOTS[1]?.[1] ?? <i />)).toBe(
      'Ø30.00. Pass 1: 1.25 mm a side, Ø27.50, now; Finish: 1.25 mm a side, Ø25.00, next.',
    );
  });

  // Source: from memory: Groover, Ra in theory is f² ÷ (32 r): 0.2 mm with an 0.8 mm nose leaves 1.56 µm.
  it('by the roughness plot: what the feed in use leaves', () => {
    expect(told(PLOTS[2]?.[1] ?? <i />)).toContain('set 0.2 mm/rev: 1.56 µm');
  });

  it('by the control chart: the subgroup outside its limits, which also wears a ring', () => {
    const steady = Array.from({ length: 9 }, () => [10, 10.02]);
    const chart = <ControlChart title="Plot" subgroups={[...steady, [10.05, 10.07]]} />;
    expect(told(chart)).toContain('outside its limits: 10.');
    expect(render(chart).match(/class="out"/g)).toHaveLength(1);
  });
});

describe('the tolerance bar', () => {
  const bar = (reading: number | undefined, side: 'outside' | 'inside') =>
    render(
      <ToleranceBar
        title="Size"
        lower={24.98}
        upper={25}
        reading={reading}
        side={side}
        verdict={reading === undefined ? undefined : 'within'}
      />,
    );
  const words = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]*)</g)].map((one) => one[1]);

  // Source: common practice, no source: metal cannot be put back on a shaft, nor into a bore.
  it('calls too small lost for a shaft, and too large lost for a bore', () => {
    expect(words(bar(undefined, 'outside')).slice(0, 2)).toEqual(['lost', 'rework']);
    expect(words(bar(undefined, 'inside')).slice(0, 2)).toEqual(['rework', 'lost']);
  });

  it('writes reading and verdict, or that nothing is measured yet', () => {
    expect(words(bar(24.99, 'outside'))).toContain('24.99 within');
    expect(words(bar(undefined, 'outside'))).toContain('not measured yet');
  });
});

describe('a plot that cannot be', () => {
  it('says that no speed of the card is safe', () => {
    const plot = (
      <SpeedPlot
        title="Plot"
        surfaceSpeed={28}
        speeds={[450]}
        chuckLimit={300}
        diameters={[5, 50]}
      />
    );
    expect(render(plot)).toContain('>no speed on the card is safe here<');
  });

  it('says which subgroup is uneven', () => {
    expect(told(<ControlChart title="Plot" subgroups={[[1, 2], [3]]} />)).toMatch(/^Subgroup 2/);
  });
});
