/** One view of a block: its edges, what is cut now, the stock round it, its centre lines. */

import type { Area, Line, Pen, Place } from '../marks.ts';
import { type PieceState, stateOf } from '../piece.ts';
import type { Block } from './block.ts';
import { type Edge, edgesOf, SIGHTS, type ViewName } from './project.ts';
import {
  type Bored,
  type Box,
  boresOf,
  type Cut,
  type Solid,
  type Stretch,
  surfaceAt,
} from './solid.ts';

/** From mm along both axes of a view to a place in the picture. */
export type ToView = (across: number, up: number) => Place;

/** A line of a view in mm along its axes. */
export interface Trace {
  readonly pen: Pen;
  readonly points: readonly (readonly [number, number])[];
  readonly feature: string | null;
}

export interface BlockView {
  readonly name: ViewName;
  readonly traces: readonly Trace[];
  readonly areas: readonly { readonly points: Trace['points']; readonly feature: string }[];
}

/** How far a centre line goes beyond what it is the middle of, in mm. */
export const overrun = ({ stock }: Solid) => Math.max(stock.length[1], stock.width[1]) * 0.02;

export function viewOf(block: Block, solid: Solid, state: PieceState, name: ViewName): BlockView {
  const pens = pensFor(state);
  const bores = boresOf(block, solid);
  const now = (feature: string) => stateOf(state, feature) === 'now';
  return {
    name,
    traces: [
      ...stockTraces(solid, name),
      ...edgesOf(solid, SIGHTS[name]).map((edge) => edgeTrace(edge, pens)),
      ...bores.flatMap((bore) => boreTraces(bore, solid, name, pens)),
      ...middleTraces(block, solid, name),
    ],
    areas: [
      ...[...solid.slabs, ...solid.cuts].filter(({ feature }) => now(feature)).map(shadow(name)),
      ...bores.filter(({ hole }) => now(hole.id)).map((bore) => boreShadow(bore, name)),
    ],
  };
}

/** The view where it stands in the picture. */
export function drawn(view: BlockView, to: ToView) {
  const places = (points: Trace['points']) => points.map(([across, up]) => to(across, up));
  const lines: readonly Line[] = view.traces.map(({ pen, points, feature }) => ({
    pen,
    points: places(points),
    feature: feature ?? undefined,
  }));
  const areas: readonly Area[] = view.areas.map(({ points, feature }) => ({
    points: places(points),
    feature,
  }));
  return { lines, areas };
}

type Pens = (feature: string | null, hidden: boolean) => Pen;

/** Hidden edges are dashed whatever their state, but for what is cut now, which is broader. */
function pensFor(state: PieceState): Pens {
  return (feature, hidden) => {
    const of = feature === null ? 'done' : stateOf(state, feature);
    if (of === 'now') return hidden ? 'now-hidden' : 'now';
    if (hidden) return 'hidden';
    return of === 'done' ? 'firm' : 'planned';
  };
}

function edgeTrace({ runs, at, stretch, hidden, feature }: Edge, pens: Pens): Trace {
  const points = stretch.map((along) =>
    runs === 'up' ? ([at, along] as const) : ([along, at] as const),
  );
  return { pen: pens(feature, hidden), points, feature };
}

/** The stock where it stands beyond the finished block. */
function stockTraces({ stock, finished }: Solid, name: ViewName): readonly Trace[] {
  const { across, up } = SIGHTS[name];
  return [
    ...beyond(stock[up], finished[up], stock[across], finished[across]).map(([at, [a, b]]) =>
      stockTrace([a, at], [b, at]),
    ),
    ...beyond(stock[across], finished[across], stock[up], finished[up]).map(([at, [a, b]]) =>
      stockTrace([at, a], [at, b]),
    ),
  ];
}

/** Both edges of the stock at the ends of one axis: whole, or only what is longer than the finished one on it. */
function beyond(
  ends: Stretch,
  finishedEnds: Stretch,
  along: Stretch,
  finishedAlong: Stretch,
): readonly (readonly [number, Stretch])[] {
  return ends.flatMap((at, index) => {
    if (at !== finishedEnds[index]) return [[at, along] as const];
    const rests: readonly Stretch[] = [
      [along[0], finishedAlong[0]],
      [finishedAlong[1], along[1]],
    ];
    return rests.filter(([a, b]) => b > a).map((rest) => [at, rest] as const);
  });
}

function stockTrace(a: readonly [number, number], b: readonly [number, number]): Trace {
  return { pen: 'stock', points: [a, b], feature: null };
}

/** The box as it is seen in a view. */
function shadow(name: ViewName): (cut: Cut) => BlockView['areas'][number] {
  return ({ feature, box }) => ({ feature, points: rectangle(box, name) });
}

function rectangle(box: Box, name: ViewName): Trace['points'] {
  const { across, up } = SIGHTS[name];
  const [[left, right], [low, high]] = [box[across], box[up]];
  return [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ];
}

/** A circle from above; hidden walls, bottom and point, with a centre line, from the side. */
function boreTraces(bore: Bored, solid: Solid, name: ViewName, pens: Pens): readonly Trace[] {
  const { hole, x, y, radius, top, bottom, tip } = bore;
  const more = overrun(solid);
  const centre = (points: Trace['points']): Trace => ({ pen: 'centre', points, feature: hole.id });
  if (name === 'top') {
    const reach = radius + more;
    return [
      { pen: pens(hole.id, false), points: circle(bore), feature: hole.id },
      centre([
        [x - reach, y],
        [x + reach, y],
      ]),
      centre([
        [x, y - reach],
        [x, y + reach],
      ]),
    ];
  }
  const at = name === 'front' ? x : y;
  const walls = [-radius, radius].flatMap((off): readonly Trace['points'][] => {
    const inside = off * 0.999;
    const [wallX, wallY] = name === 'front' ? [x + inside, y] : [x, y + inside];
    const high = surfaceAt(solid, wallX, wallY);
    return high > bottom
      ? [
          [
            [at + off, bottom],
            [at + off, high],
          ],
        ]
      : [];
  });
  const end: Trace['points'] =
    tip < bottom
      ? [
          [at - radius, bottom],
          [at, tip],
          [at + radius, bottom],
          [at - radius, bottom],
        ]
      : [
          [at - radius, bottom],
          [at + radius, bottom],
        ];
  const pen = pens(hole.id, true);
  const blind = hole.depth === undefined ? [] : [end];
  return [
    ...[...walls, ...blind].map((points) => ({ pen, points, feature: hole.id })),
    centre([
      [at, tip - more],
      [at, top + more],
    ]),
  ];
}

function boreShadow(bore: Bored, name: ViewName): BlockView['areas'][number] {
  const { hole, x, y, radius, top, bottom } = bore;
  if (name === 'top') return { feature: hole.id, points: circle(bore) };
  const at = name === 'front' ? x : y;
  const [left, right] = [at - radius, at + radius];
  return {
    feature: hole.id,
    points: [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ],
  };
}

/** Straight stretches in a circle: at this number no eye tells it from a round one. */
const STRETCHES = 64;

/** Closed: it ends where it begins. */
function circle({ x, y, radius }: Bored): Trace['points'] {
  return Array.from({ length: STRETCHES + 1 }, (_, index) => {
    const turned = (2 * Math.PI * (index % STRETCHES)) / STRETCHES;
    return [x + radius * Math.cos(turned), y + radius * Math.sin(turned)] as const;
  });
}

/** A slot in the middle has its plane of symmetry drawn, from above and in the view along it. */
function middleTraces(block: Block, solid: Solid, name: ViewName): readonly Trace[] {
  const { finished } = solid;
  const more = overrun(solid);
  return block.features.flatMap((feature): readonly Trace[] => {
    if (feature.kind !== 'slot' || feature.from !== undefined) return [];
    const axis = feature.along === 'length' ? 'width' : 'length';
    const { across, up, deep } = SIGHTS[name];
    if (deep === axis) return [];
    const at = (finished[axis][0] + finished[axis][1]) / 2;
    const [low, high] = finished[across === axis ? up : across];
    const ends = [low - more, high + more];
    const points = ends.map((end) =>
      across === axis ? ([at, end] as const) : ([end, at] as const),
    );
    return [{ pen: 'centre', points, feature: feature.id }];
  });
}
