/** The pass plan as bars, one row a pass: where it begins, how deep it goes, what diameter it leaves. */
import { Hatched, LETTERS, Letters, LINE, LIT, PLOT_WIDTH, PlotFrame } from './PlotFrame.tsx';
import type { Pass, PassRow } from './pass-rows.ts';
import { passesThrough, passRows } from './pass-rows.ts';
import type { PlotWords } from './plot-words.ts';
import { figure, sizeFigure } from './plot-words.ts';
import type { Scale } from './scale.ts';
import { linearScale } from './scale.ts';
import { usePlotWords } from './use-plot-words.ts';

export interface PassPlotProps {
  readonly title: string;
  /** Diameter before the first pass, mm. */
  readonly from: number;
  /** Diameter after each pass, mm; larger ones when boring. */
  readonly after: readonly number[];
  /** Whether the last pass is the finishing one. */
  readonly finishing: boolean;
  /** The pass that is next or under way, from 0; all are done when it equals their number. */
  readonly current: number;
  readonly decimals?: number | undefined;
  readonly words?: PlotWords | undefined;
}

const ROW = 62;
const TOP = 12;
const BAR = { left: 178, right: PLOT_WIDTH - 190, height: 34 };

export function PassPlot(props: PassPlotProps) {
  const { title, from, after, finishing, current } = props;
  const words = usePlotWords(props.words);
  const passes = passesThrough(from, after, finishing);
  const rows = passRows(passes, current);
  const scale = linearScale([from, after.at(-1) ?? from], [BAR.left, BAR.right]);
  return (
    <PlotFrame
      kind="pass"
      title={title}
      told={told(props, passes, words)}
      height={TOP * 2 + Math.max(rows.length, 1) * ROW}
    >
      {rows.map((row, index) => (
        <Row key={keyOf(row, index)} {...{ row, scale, props, words }} top={TOP + index * ROW} />
      ))}
    </PlotFrame>
  );
}

function keyOf(row: PassRow, index: number): string {
  return row.kind === 'pass' ? `pass ${row.index}` : `gap ${index}`;
}

interface RowProps {
  readonly row: PassRow;
  readonly top: number;
  readonly scale: Scale;
  readonly props: PassPlotProps;
  readonly words: PlotWords;
}

function Row({ row, top, scale, props, words }: RowProps) {
  if (row.kind === 'left-out')
    return <Letters x={BAR.left} y={top + ROW * 0.6}>{`… ${row.count} ${words.more}`}</Letters>;
  const { pass, index } = row;
  const [start, end] = [scale(pass.before), scale(pass.after)];
  const state = stateOf(index, props.current);
  return (
    <g class={`pass pass-${state}`}>
      <path d={`M${BAR.left} ${top + 45} H${BAR.right}`} stroke={LINE} stroke-width="1.2" />
      <Letters x={8} y={top + 26} bold={state === 'now'}>
        {pass.finishing ? words.finish : `${words.pass} ${index + 1}`}
      </Letters>
      <Letters x={8} y={top + 51} size={LETTERS * 0.82} bold={state === 'now'}>
        {state === 'now' ? `▸ ${words.now}` : words[state]}
      </Letters>
      <rect
        x={start}
        y={top + 10}
        width={Math.max(end - start, 3)}
        height={BAR.height}
        fill={fillOf(state)}
        stroke={LINE}
        stroke-width={state === 'now' ? 5 : 2}
        stroke-dasharray={state === 'next' ? '7 5' : undefined}
      />
      {pass.finishing && state !== 'done' && (
        <Hatched left={start} right={end} top={top + 10} bottom={top + 10 + BAR.height} />
      )}
      <Letters x={PLOT_WIDTH - 178} y={top + 26} bold>
        {`Ø${sizeFigure(pass.after, props.decimals ?? 2, words)}`}
      </Letters>
      <Letters x={PLOT_WIDTH - 178} y={top + 51} size={LETTERS * 0.82}>
        {`${depth(pass, words)} ${words.side}`}
      </Letters>
    </g>
  );
}

type State = 'done' | 'now' | 'next';

function stateOf(index: number, current: number): State {
  if (index === current) return 'now';
  return index < current ? 'done' : 'next';
}

function fillOf(state: State): string {
  if (state === 'done') return LINE;
  return state === 'now' ? LIT : 'none';
}

function depth({ before, after }: Pass, words: PlotWords): string {
  return figure(Math.abs(before - after) / 2, 3, words);
}

function told(props: PassPlotProps, passes: readonly Pass[], words: PlotWords): string {
  const lines = passes.map((pass, index) => {
    const name = pass.finishing ? words.finish : `${words.pass} ${index + 1}`;
    const size = sizeFigure(pass.after, props.decimals ?? 2, words);
    return `${name}: ${depth(pass, words)} mm ${words.side}, Ø${size}, ${words[stateOf(index, props.current)]}`;
  });
  return `Ø${sizeFigure(props.from, props.decimals ?? 2, words)}. ${lines.join('; ')}.`;
}
