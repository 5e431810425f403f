/** One reading against its limits: the zone, what lies beyond it on each side, and where the reading fell. */
import { textWidth } from '../drawing/text-width.ts';
import { Hatched, LETTERS, Letters, LINE, LIT, PLOT_WIDTH, PlotFrame } from './PlotFrame.tsx';
import type { PlotWords } from './plot-words.ts';
import { sizeFigure } from './plot-words.ts';
import type { TolerancePlaces, ToleranceQuestion } from './tolerance-places.ts';
import { tolerancePlaces } from './tolerance-places.ts';
import { usePlotWords } from './use-plot-words.ts';

export interface ToleranceBarProps extends ToleranceQuestion {
  readonly title: string;
  /** A shaft is lost when too small, a bore when too large. */
  readonly side: 'outside' | 'inside';
  /** As the trade judged it; the bar does not judge. */
  readonly verdict?: 'within' | 'rework' | 'lost' | undefined;
  readonly decimals?: number | undefined;
  readonly unit?: string | undefined;
  readonly words?: PlotWords | undefined;
}

const HEIGHT = 224;
const BAR = { left: 20, right: PLOT_WIDTH - 20, top: 84, bottom: 140 };
const BIG = LETTERS * 1.45;

export function ToleranceBar(props: ToleranceBarProps) {
  const { title, lower, upper, side } = props;
  const words = usePlotWords(props.words);
  const places = tolerancePlaces(props, BAR.left, BAR.right);
  const size = (value: number) => sizeFigure(value, props.decimals ?? 2, words);
  const [low, high] = side === 'outside' ? [words.lost, words.rework] : [words.rework, words.lost];
  return (
    <PlotFrame kind="tolerance" title={title} told={told(props, words)} height={HEIGHT}>
      <Beyond from={BAR.left} to={places.lower} name={low} hatched={side === 'outside'} />
      <Beyond from={places.upper} to={BAR.right} name={high} hatched={side === 'inside'} />
      <rect
        class="zone"
        x={places.lower}
        y={BAR.top}
        width={places.upper - places.lower}
        height={BAR.bottom - BAR.top}
        fill={LIT}
        stroke={LINE}
        stroke-width="5"
      />
      <Name x={(places.lower + places.upper) / 2}>{words.within}</Name>
      {([lower, upper] as const).map((limit, index) => (
        <Letters
          key={index ? 'upper' : 'lower'}
          x={places.scale(limit)}
          y={BAR.bottom + 34}
          anchor="middle"
          bold
        >
          {size(limit)}
        </Letters>
      ))}
      <Reading {...{ props, places, words }} />
    </PlotFrame>
  );
}

/** Sizes outside the limits: lost ones are hatched, so that the two ends differ without colour. */
function Beyond(props: {
  readonly from: number;
  readonly to: number;
  readonly name: string;
  readonly hatched: boolean;
}) {
  const { from, to, name, hatched } = props;
  const [top, bottom] = [BAR.top + 8, BAR.bottom - 8];
  return (
    <g class="beyond">
      {hatched && <Hatched left={from} right={to} top={top} bottom={bottom} />}
      <path
        d={`M${from} ${top} H${to} V${bottom} H${from} Z`}
        fill="none"
        stroke={LINE}
        stroke-width="2.5"
      />
      <Name x={(from + to) / 2}>{name}</Name>
    </g>
  );
}

/** What a stretch of the bar means, under it and under its limits. */
function Name({ x, children }: { readonly x: number; readonly children: string }) {
  return (
    <Letters x={x} y={BAR.bottom + 66} anchor="middle">
      {children}
    </Letters>
  );
}

function Reading(own: {
  readonly props: ToleranceBarProps;
  readonly places: TolerancePlaces;
  readonly words: PlotWords;
}) {
  const { props, places, words } = own;
  if (places.reading === undefined || props.reading === undefined)
    return (
      <Letters x={PLOT_WIDTH / 2} y={BIG + 4} anchor="middle">
        {words.noReading}
      </Letters>
    );
  const x = places.reading;
  const text = `${sizeFigure(props.reading, props.decimals ?? 2, words)}${props.verdict ? ` ${words[props.verdict]}` : ''}`;
  const half = textWidth(text, BIG, true) / 2;
  const middle = Math.min(Math.max(x, half + 4), PLOT_WIDTH - half - 4);
  return (
    <g class="reading">
      <path d={pointer(x, places.beyond)} fill={LINE} />
      <path d={`M${x} ${BAR.top - 8} V${BAR.bottom + 8}`} stroke={LINE} stroke-width="6" />
      <Letters x={middle} y={BIG + 4} anchor="middle" bold size={BIG}>
        {text}
      </Letters>
    </g>
  );
}

/** Points down at the reading; sideways where the reading lies off the bar. */
function pointer(x: number, beyond: 'below' | 'above' | undefined): string {
  const y = BAR.top - 8;
  if (beyond === 'below') return `M${x - 16} ${y - 14} L${x + 16} ${y - 30} V${y + 2} Z`;
  if (beyond === 'above') return `M${x + 16} ${y - 14} L${x - 16} ${y - 30} V${y + 2} Z`;
  return `M${x} ${y + 2} L${x - 16} ${y - 26} H${x + 16} Z`;
}

function told(props: ToleranceBarProps, words: PlotWords): string {
  const unit = props.unit ?? 'mm';
  const size = (value: number) => sizeFigure(value, props.decimals ?? 2, words);
  const reading =
    props.reading === undefined
      ? words.noReading
      : `${words.reading} ${size(props.reading)} ${unit}${props.verdict ? `, ${words[props.verdict]}` : ''}`;
  return `${words.within} ${size(props.lower)}–${size(props.upper)} ${unit}; ${reading}.`;
}
