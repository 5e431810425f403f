/** Roughness in theory against feed: the curve of this nose radius, the card's feeds on it, the Ra wanted. */
import { feedFor, roughnessAt } from './finish-figures.ts';
import type { Box } from './PlotFrame.tsx';
import {
  GROUND,
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
import { linearScale, roundFigures } from './scale.ts';
import { usePlotWords } from './use-plot-words.ts';

export interface FinishPlotProps {
  readonly title: string;
  /** mm */
  readonly noseRadius: number;
  /** Feeds on the machine's card, mm/rev. */
  readonly feeds: readonly number[];
  /** Ra that is wanted, µm. */
  readonly wanted?: number | undefined;
  /** The feed in use, mm/rev. */
  readonly feed?: number | undefined;
  readonly words?: PlotWords | undefined;
}

const HEIGHT = 450;
const BOX: Box = { left: 74, right: PLOT_WIDTH - 36, top: 60, bottom: HEIGHT - 66 };
const POINTS = 50;

export function FinishPlot(props: FinishPlotProps) {
  const { title, noseRadius, feeds, wanted, feed } = props;
  const words = usePlotWords(props.words);
  const most = longestFeed(props);
  const highest = Math.max(roughnessAt(most, noseRadius) ?? 1, (wanted ?? 0) * 1.15);
  const x = linearScale([0, most], [BOX.left, BOX.right]);
  const y = linearScale([0, highest], [BOX.bottom, BOX.top]);
  const points = Array.from({ length: POINTS + 1 }, (_, index) => (most * index) / POINTS);
  const spot = (one: number) => {
    const ra = one === 0 ? 0 : roughnessAt(one, noseRadius);
    return ra === undefined ? [] : [[x(one), y(ra)] as const];
  };
  return (
    <PlotFrame kind="finish" title={title} told={told(props, words)} height={HEIGHT}>
      <UprightAxis
        box={BOX}
        scale={y}
        figures={roundFigures([0, highest], 5)}
        written={(one) => figure(one, 2, words)}
      />
      <LevelAxis
        box={BOX}
        scale={x}
        figures={roundFigures([0, most], 5)}
        written={(one) => figure(one, 3, words)}
        name={words.feed}
      />
      <Letters x={8} y={LETTERS + 2}>
        {words.roughness}
      </Letters>
      {wanted !== undefined && <Wanted place={y(wanted)} ra={wanted} words={words} />}
      <path
        class="theory"
        d={pathThrough(points.flatMap(spot))}
        fill="none"
        stroke={LINE}
        stroke-width="5"
      />
      {feeds
        .filter((one) => one <= most)
        .flatMap(spot)
        .map(([cx, cy]) => (
          <circle key={cx} cx={cx} cy={cy} r="7" fill={GROUND} stroke={LINE} stroke-width="3" />
        ))}
      {feed !== undefined && feed <= most && (
        <Here {...{ spot: spot(feed), feed, noseRadius, words }} />
      )}
    </PlotFrame>
  );
}

/** The feed in use, marked on the curve and told in figures. */
function Here(here: {
  readonly spot: readonly (readonly [number, number])[];
  readonly feed: number;
  readonly noseRadius: number;
  readonly words: PlotWords;
}) {
  const ra = roughnessAt(here.feed, here.noseRadius);
  if (ra === undefined) return null;
  return (
    <g class="here">
      {here.spot.map(([cx, cy]) => (
        <circle key={cx} cx={cx} cy={cy} r="13" fill={LIT} stroke={LINE} stroke-width="4" />
      ))}
      <Letters x={BOX.right} y={LETTERS + 6} anchor="end" bold size={LETTERS * 1.2}>
        {`${figure(here.feed, 3, here.words)}: Ra ${figure(ra, 2, here.words)}`}
      </Letters>
    </g>
  );
}

function Wanted(props: { readonly place: number; readonly ra: number; readonly words: PlotWords }) {
  const { place, ra, words } = props;
  return (
    <g class="wanted">
      <path
        d={`M${BOX.left} ${place} H${BOX.right}`}
        stroke={LINE}
        stroke-width="3"
        stroke-dasharray="12 7"
      />
      <Letters x={BOX.left + 12} y={place - 9} bold>
        {`${words.wanted} ${figure(ra, 2, words)}`}
      </Letters>
    </g>
  );
}

/** As far as the card's feeds near the wanted roughness reach; the coarsest would squeeze the rest. */
function longestFeed({ feeds, wanted, noseRadius, feed }: FinishPlotProps): number {
  const limit = wanted === undefined ? undefined : feedFor(wanted, noseRadius);
  const near = limit === undefined ? feeds : feeds.filter((one) => one <= limit * 1.7);
  const reach = Math.max(...near, limit === undefined ? 0 : limit * 1.2, feed ?? 0, 0.05);
  return Math.min(reach * 1.05, 2 * noseRadius);
}

function told(props: FinishPlotProps, words: PlotWords): string {
  const ra = (feed: number) => {
    const value = roughnessAt(feed, props.noseRadius);
    return value === undefined ? '–' : figure(value, 2, words);
  };
  const lines = props.feeds.map(
    (feed) => `${figure(feed, 3, words)} ${words.perTurn}: ${ra(feed)} µm`,
  );
  const wanted =
    props.wanted === undefined ? [] : [`${words.wanted} ${figure(props.wanted, 2, words)} µm`];
  const here =
    props.feed === undefined
      ? []
      : [`${words.set} ${figure(props.feed, 3, words)} ${words.perTurn}: ${ra(props.feed)} µm`];
  return `${[...wanted, ...here, ...lines].join('; ')}.`;
}
