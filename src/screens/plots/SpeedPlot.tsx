/** Spindle speed against diameter: the curve of the surface speed, and under it the card's speeds as steps. */
import type { Box } from './PlotFrame.tsx';
import {
  LETTERS,
  Letters,
  LevelAxis,
  LINE,
  LIT,
  PLOT_WIDTH,
  PlotFrame,
  pathThrough,
  UprightAxis,
} from './PlotFrame.tsx';
import type { PlotWords } from './plot-words.ts';
import { figure } from './plot-words.ts';
import type { Scale, Stretch } from './scale.ts';
import { decadeFigures, keptApart, logScale } from './scale.ts';
import type { SpeedQuestion, SpeedStep } from './speed-figures.ts';
import { idealSpeed, speedSteps, speedToSet } from './speed-figures.ts';
import { usePlotWords } from './use-plot-words.ts';

export interface SpeedPlotProps extends SpeedQuestion {
  readonly title: string;
  /** Smallest and largest diameter shown, mm. */
  readonly diameters: Stretch;
  /** The diameter under the tool, mm. */
  readonly diameter?: number | undefined;
  readonly words?: PlotWords | undefined;
}

const HEIGHT = 470;
const BOX: Box = { left: 92, right: PLOT_WIDTH - 36, top: 62, bottom: HEIGHT - 66 };
/** Enough points for a smooth curve. */
const POINTS = 60;

/** Both axes in equal ratios, so that the curve is straight and each step of the card is as high as it feels. */
export function SpeedPlot(props: SpeedPlotProps) {
  const { title, diameters, diameter } = props;
  const words = usePlotWords(props.words);
  const steps = speedSteps(props, diameters);
  if (steps.every(({ speed }) => speed === null)) return <NoSpeed {...{ title, words }} />;
  const x = logScale(diameters, [BOX.left, BOX.right]);
  const y = logScale(speedStretch(props, steps), [BOX.bottom, BOX.top]);
  const speeds = [...props.speeds].sort((a, b) => b - a);
  return (
    <PlotFrame kind="speed" title={title} told={told(props, steps, words)} height={HEIGHT}>
      <UprightAxis
        box={BOX}
        scale={y}
        figures={keptApart(
          speeds.filter((one) => onBox(y(one))),
          y,
          LETTERS * 1.05,
        )}
        written={(one) => figure(one, 0, words)}
      />
      <LevelAxis
        box={BOX}
        scale={x}
        figures={keptApart(decadeFigures(diameters), x, LETTERS * 2.2)}
        written={(one) => figure(one, 1, words)}
        name={words.diameter}
      />
      <Letters x={8} y={LETTERS + 2}>
        {words.speed}
      </Letters>
      <path
        class="ideal"
        d={pathThrough(curve(props, diameters, x, y))}
        fill="none"
        stroke={LINE}
        stroke-width="2.5"
        stroke-dasharray="10 7"
      />
      <path class="steps" d={stairs(steps, x, y)} fill="none" stroke={LINE} stroke-width="6" />
      {diameter !== undefined && <Here {...{ props, diameter, x, y, words }} />}
    </PlotFrame>
  );
}

/** No speed of the card is safe for any diameter shown: better an empty plot than a guess. */
function NoSpeed({ title, words }: { readonly title: string; readonly words: PlotWords }) {
  return (
    <PlotFrame kind="speed" title={title} told={`${words.noSpeed}.`} height={60}>
      <Letters x={8} y={40}>
        {words.noSpeed}
      </Letters>
    </PlotFrame>
  );
}

/** The diameter under the tool: where it meets the steps, and the speed there in figures. */
function Here(here: {
  readonly props: SpeedPlotProps;
  readonly diameter: number;
  readonly x: Scale;
  readonly y: Scale;
  readonly words: PlotWords;
}) {
  const { props, diameter, x, y, words } = here;
  const speed = speedToSet(props, diameter);
  if (speed === undefined || diameter < props.diameters[0] || diameter > props.diameters[1])
    return null;
  const text = `Ø${figure(diameter, 2, words)}: ${words.set} ${figure(speed, 0, words)}`;
  return (
    <g class="here">
      <path
        d={`M${x(diameter)} ${BOX.bottom} V${y(speed)} H${BOX.left}`}
        fill="none"
        stroke={LINE}
        stroke-width="2.5"
      />
      <circle cx={x(diameter)} cy={y(speed)} r="12" fill={LIT} stroke={LINE} stroke-width="4" />
      <Letters x={BOX.right} y={LETTERS + 6} anchor="end" bold size={LETTERS * 1.2}>
        {text}
      </Letters>
    </g>
  );
}

function onBox(place: number): boolean {
  return place >= BOX.top - 1 && place <= BOX.bottom + 1;
}

/** Only as many of the card's speeds as the diameters shown can use, and one step of room. */
function speedStretch(props: SpeedPlotProps, steps: readonly SpeedStep[]): Stretch {
  const used = steps.flatMap(({ speed }) => speed ?? []);
  const ends = props.diameters.flatMap((one) => idealSpeed(props.surfaceSpeed, one) ?? []);
  const low = Math.min(...used, Math.max(Math.min(...ends), Math.min(...used) / 2));
  const high = Math.max(...used, Math.min(Math.max(...ends), Math.max(...used) * 1.6));
  return [low / 1.12, high * 1.12];
}

function curve(props: SpeedPlotProps, [from, to]: Stretch, x: Scale, y: Scale) {
  return Array.from({ length: POINTS + 1 }, (_, index) => from * (to / from) ** (index / POINTS))
    .flatMap((one) => {
      const speed = idealSpeed(props.surfaceSpeed, one);
      return speed === undefined ? [] : [[x(one), y(speed)] as const];
    })
    .filter(([, place]) => onBox(place));
}

function stairs(steps: readonly SpeedStep[], x: Scale, y: Scale): string {
  return steps
    .map(({ from, to, speed }, index) => {
      if (speed === null) return '';
      const broken = index === 0 || steps[index - 1]?.speed === null;
      return `${broken ? 'M' : 'L'}${x(from).toFixed(1)} ${y(speed).toFixed(1)} H${x(to).toFixed(1)}`;
    })
    .join(' ');
}

function told(props: SpeedPlotProps, steps: readonly SpeedStep[], words: PlotWords): string {
  const parts = steps.map(({ from, to, speed }) => {
    const span = `Ø${figure(from, 1, words)}–${figure(to, 1, words)}`;
    return `${span}: ${speed === null ? '–' : figure(speed, 0, words)} ${words.speed}`;
  });
  const at = props.diameter === undefined ? undefined : speedToSet(props, props.diameter);
  const here =
    at === undefined || props.diameter === undefined
      ? []
      : [
          `Ø${figure(props.diameter, 2, words)}: ${words.set} ${figure(at, 0, words)} ${words.speed}`,
        ];
  return `${[...here, ...parts].join('; ')}.`;
}
