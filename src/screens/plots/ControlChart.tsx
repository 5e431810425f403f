/** X-bar and R chart of a batch: means above, ranges below, each between its limits. */

import { useLanguage } from '../use-say.ts';
import type { Panel } from './control-figures.ts';
import { controlFigures } from './control-figures.ts';
import type { Box } from './PlotFrame.tsx';
import {
  FAINT,
  GROUND,
  LETTERS,
  Letters,
  LINE,
  PLOT_WIDTH,
  PlotFrame,
  pathThrough,
} from './PlotFrame.tsx';
import type { PlotWords } from './plot-words.ts';
import { sizeFigure } from './plot-words.ts';
import type { Scale } from './scale.ts';
import { keptApart, linearScale, stretchOf } from './scale.ts';
import { usePlotWords } from './use-plot-words.ts';

export interface ControlChartProps {
  readonly title: string;
  /** Readings of each subgroup in mm, in the order they were made. */
  readonly subgroups: readonly (readonly number[])[];
  readonly decimals?: number | undefined;
  readonly words?: PlotWords | undefined;
}

const MEANS: Box = { left: 20, right: PLOT_WIDTH - 116, top: 46, bottom: 236 };
const RANGES: Box = { left: 20, right: PLOT_WIDTH - 116, top: 300, bottom: 430 };
const HEIGHT = 500;

export function ControlChart({ title, subgroups, decimals = 3, ...given }: ControlChartProps) {
  const words = usePlotWords(given.words);
  const figures = controlFigures(subgroups, useLanguage());
  if (!figures.ok)
    return (
      <PlotFrame kind="control" title={title} told={figures.fault} height={60}>
        <Letters x={8} y={38} size={LETTERS * 0.8}>
          {figures.fault}
        </Letters>
      </PlotFrame>
    );
  const size = (value: number) => sizeFigure(value, decimals, words);
  const x = linearScale([1, subgroups.length], [MEANS.left + 26, MEANS.right - 26]);
  const numbers = keptApart(
    subgroups.map((_, index) => index + 1),
    x,
    LETTERS * 1.7,
  );
  const told = [
    tell(words.mean, figures.means, size, words),
    tell(words.range, figures.ranges, size, words),
  ];
  return (
    <PlotFrame kind="control" title={title} told={told.join(' ')} height={HEIGHT}>
      <PanelDrawing name={words.mean} panel={figures.means} box={MEANS} x={x} size={size} />
      <PanelDrawing name={words.range} panel={figures.ranges} box={RANGES} x={x} size={size} />
      {numbers.map((number) => (
        <Letters key={number} x={x(number)} y={RANGES.bottom + 28} anchor="middle">
          {String(number)}
        </Letters>
      ))}
      <Letters x={(MEANS.left + MEANS.right) / 2} y={HEIGHT - 12} anchor="middle">
        {words.piece}
      </Letters>
    </PlotFrame>
  );
}

interface PanelProps {
  readonly name: string;
  readonly panel: Panel;
  readonly box: Box;
  readonly x: Scale;
  readonly size: (value: number) => string;
}

/** Limits dashed, the centre whole; a point outside wears a square ring, since colour alone tells nothing. */
function PanelDrawing({ name, panel, box, x, size }: PanelProps) {
  const { values, centre, lower, upper } = panel;
  const y = linearScale(stretchOf([...values, lower, upper], 0.06), [box.bottom, box.top]);
  const spots = values.map((value, index) => [x(index + 1), y(value)] as const);
  const labelled = keptApart([upper, lower, centre], y, LETTERS * 1.05);
  return (
    <g class="panel">
      <Letters x={box.left} y={box.top - 14} bold>
        {name}
      </Letters>
      {[upper, centre, lower].map((line, index) => (
        <path
          key={`${index === 1 ? 'centre' : index}`}
          d={`M${box.left} ${y(line)} H${box.right}`}
          stroke={LINE}
          stroke-width="2.5"
          stroke-dasharray={index === 1 ? undefined : '12 7'}
        />
      ))}
      {labelled.map((line) => (
        <Letters key={line} x={box.right + 8} y={y(line) + LETTERS * 0.35}>
          {size(line)}
        </Letters>
      ))}
      <path d={pathThrough(spots)} fill="none" stroke={FAINT} stroke-width="4" />
      {spots.map(([cx, cy], index) => (
        <g key={cx}>
          {isOutside(values[index] ?? centre, panel) && (
            <rect
              class="out"
              x={cx - 14}
              y={cy - 14}
              width="28"
              height="28"
              fill={GROUND}
              stroke={LINE}
              stroke-width="4"
            />
          )}
          <circle cx={cx} cy={cy} r="7" fill={LINE} />
        </g>
      ))}
    </g>
  );
}

function isOutside(value: number, { lower, upper }: Panel): boolean {
  return value < lower || value > upper;
}

function tell(
  name: string,
  panel: Panel,
  size: (value: number) => string,
  words: PlotWords,
): string {
  const out = panel.values.flatMap((value, index) => (isOutside(value, panel) ? [index + 1] : []));
  const limits = `${size(panel.lower)}–${size(panel.upper)}`;
  const beyond = out.length > 0 ? `; ${words.outside}: ${out.join(', ')}` : '';
  return `${name} ${size(panel.centre)} (${limits}): ${panel.values.map(size).join(', ')}${beyond}.`;
}
