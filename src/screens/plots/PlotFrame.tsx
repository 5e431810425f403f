/** What all plots share: the SVG with its title and words for who cannot see it, axes, and lettering. */
import type { ComponentChildren } from 'preact';
import { hatch } from '../drawing/hatch.ts';
import type { Scale } from './scale.ts';

export const LINE = 'var(--line, currentColor)';
export const GROUND = 'var(--ground, Canvas)';
export const LIT = 'var(--lit, color-mix(in srgb, currentColor 45%, transparent))';
export const FAINT = 'color-mix(in srgb, var(--line, currentColor) 28%, transparent)';

/** Every plot is this wide in picture units; its letters are 14 px high where it is 360 px wide. */
export const PLOT_WIDTH = 640;
export const LETTERS = 26;

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function PlotFrame(props: {
  readonly kind: string;
  readonly title: string;
  /** The figures in sentences. */
  readonly told: string;
  readonly height: number;
  readonly children: ComponentChildren;
}) {
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      class={`plot plot-${props.kind}`}
      viewBox={`0 0 ${PLOT_WIDTH} ${props.height}`}
      role="img"
      aria-label={`${props.title}. ${props.told}`}
      font-family="system-ui, 'DejaVu Sans', sans-serif"
      font-size={LETTERS}
    >
      <title>{props.title}</title>
      <desc>{props.told}</desc>
      {props.children}
    </svg>
  );
}

/** Lines across the box at the figures of the upright axis, each with its figure at the left. */
export function UprightAxis(props: {
  readonly box: Box;
  readonly scale: Scale;
  readonly figures: readonly number[];
  readonly written: (figure: number) => string;
}) {
  const { box, scale, figures, written } = props;
  return (
    <g class="axis-upright">
      {figures.map((one) => (
        <g key={one}>
          <path d={`M${box.left} ${scale(one)} H${box.right}`} stroke={FAINT} stroke-width="1.5" />
          <Letters x={box.left - 8} y={scale(one) + LETTERS * 0.35} anchor="end">
            {written(one)}
          </Letters>
        </g>
      ))}
      <path d={`M${box.left} ${box.top} V${box.bottom}`} stroke={LINE} stroke-width="2.5" />
    </g>
  );
}

/** Lines up the box at the figures of the level axis, each with its figure below, and the axis' name. */
export function LevelAxis(props: {
  readonly box: Box;
  readonly scale: Scale;
  readonly figures: readonly number[];
  readonly written: (figure: number) => string;
  readonly name: string;
}) {
  const { box, scale, figures, written, name } = props;
  return (
    <g class="axis-level">
      {figures.map((one) => (
        <g key={one}>
          <path d={`M${scale(one)} ${box.top} V${box.bottom}`} stroke={FAINT} stroke-width="1.5" />
          <Letters x={scale(one)} y={box.bottom + LETTERS * 1.15} anchor="middle">
            {written(one)}
          </Letters>
        </g>
      ))}
      <path d={`M${box.left} ${box.bottom} H${box.right}`} stroke={LINE} stroke-width="2.5" />
      <Letters x={(box.left + box.right) / 2} y={box.bottom + LETTERS * 2.35} anchor="middle">
        {name}
      </Letters>
    </g>
  );
}

/** Text with a rim in the ground's colour, so that no line runs through it. */
export function Letters(props: {
  readonly x: number;
  readonly y: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly size?: number;
  readonly children: ComponentChildren;
}) {
  return (
    <text
      x={props.x}
      y={props.y}
      text-anchor={props.anchor ?? 'start'}
      font-size={props.size ?? LETTERS}
      font-weight={props.bold ? 700 : 400}
      fill={LINE}
      stroke={GROUND}
      stroke-width="5"
      stroke-linejoin="round"
      paint-order="stroke"
    >
      {props.children}
    </text>
  );
}

/** Slanting lines in a box, so that a kind of area is known without its colour. */
export function Hatched({ left, right, top, bottom }: Box) {
  const corners = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  const lines = hatch(corners, 9).map(([a, b]) =>
    pathThrough([
      [a.x, a.y],
      [b.x, b.y],
    ]),
  );
  return <path class="hatched" d={lines.join(' ')} stroke={LINE} stroke-width="2" fill="none" />;
}

/** A path through places; gaps where a place is missing are not drawn. */
export function pathThrough(places: readonly (readonly [number, number])[]): string {
  return places
    .map(([x, y], index) => `${index ? 'L' : 'M'}${x.toFixed(1)} ${y.toFixed(1)}`)
    .join(' ');
}
