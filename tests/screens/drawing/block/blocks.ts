/** Milled blocks for the drawing tests: two written by hand, and a generator of many. */
import fc from 'fast-check';
import type { Block, BlockFeature, Side } from '../../../../src/screens/drawing/block/block.ts';
import type { PieceState } from '../../../../src/screens/drawing/piece.ts';

/** A small block with its top milled and a slot for a bolt along its middle. */
export const KEEPER: Block = {
  stock: { length: 60, width: 25, height: 18 },
  features: [
    { kind: 'face', id: 'top', side: 'top', size: 16, lower: 15.8, upper: 16.2 },
    { kind: 'slot', id: 'slot', along: 'length', width: 10, depth: 6, lower: 5.9, upper: 6.1 },
  ],
};

/** Every feature, none of them in the middle. */
export const JIG: Block = {
  stock: { length: 82, width: 44, height: 25 },
  features: [
    { kind: 'face', id: 'top', side: 'top', size: 22 },
    { kind: 'face', id: 'left', side: 'left', size: 80 },
    { kind: 'slot', id: 'long', along: 'length', from: 12, width: 10, depth: 8 },
    { kind: 'slot', id: 'cross', along: 'width', from: 40, width: 7, depth: 4 },
    { kind: 'shoulder', id: 'back', edge: 'back', width: 6, depth: 5 },
    { kind: 'shoulder', id: 'end', edge: 'left', width: 9, depth: 12 },
    { kind: 'hole', id: 'blind', fromLeft: 64, fromFront: 30, diameter: 6.8, depth: 12 },
    { kind: 'hole', id: 'through', fromLeft: 24, fromFront: 6, diameter: 5 },
  ],
};

const tenths = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 10), max: Math.round(high * 10) }).map((n) => n / 10);
const share = fc.integer({ min: 0, max: 100 }).map((n) => n / 100);

const sides: readonly Side[] = ['bottom', 'top', 'left', 'right', 'front', 'back'];
const AXIS = {
  ...({ left: 'length', right: 'length', front: 'width', back: 'width' } as const),
  ...({ bottom: 'height', top: 'height' } as const),
};

const round = (value: number) => Math.round(value * 10) / 10;

interface Lane {
  readonly there: boolean;
  readonly at: number;
  readonly wide: number;
  readonly deep: number;
  readonly limits: boolean;
}

const lane: fc.Arbitrary<Lane> = fc.record({
  there: fc.boolean(),
  at: share,
  wide: share,
  deep: share,
  limits: fc.boolean(),
});

const loose = fc.record({
  stock: fc.record({
    length: tenths(20, 160),
    width: tenths(14, 90),
    height: tenths(10, 60),
  }),
  faces: fc
    .subarray([...sides])
    .chain((list) =>
      fc.tuple(...list.map((side) => tenths(0.5, 2.5).map((off) => ({ side, off })))),
    ),
  lanes: fc.tuple(...[0, 1, 2, 3, 4, 5, 6, 7].map(() => lane)),
  middle: fc.boolean(),
  holes: fc.array(
    fc.record({ x: share, y: share, size: share, deep: fc.option(share), point: fc.boolean() }),
    {
      maxLength: 3,
    },
  ),
});

/** Slots and shoulders that leave metal between one another, in both directions, and holes anywhere. */
export const anyBlock: fc.Arbitrary<Block> = loose.map(({ stock, faces, lanes, middle, holes }) => {
  const left = { ...stock };
  const milled = faces.map(({ side, off }): BlockFeature => {
    left[AXIS[side]] = round(left[AXIS[side]] - off);
    return {
      kind: 'face',
      id: side,
      side,
      size: left[AXIS[side]],
      ...evenly(left[AXIS[side]], off > 1.5),
    };
  });
  const along = cutsIn(lanes.slice(0, 4), left.width, left.height, 'length', middle);
  const across = cutsIn(lanes.slice(4), left.length, left.height, 'width', false);
  const drilled = holes.map(({ x, y, size, deep, point }, index): BlockFeature => {
    const diameter = round(2 + size * (Math.min(left.length, left.width) / 2 - 2));
    const place = (all: number, part: number) =>
      round(diameter / 2 + part * Math.max(all - diameter, 0));
    return {
      ...{ kind: 'hole', id: `hole-${index}`, diameter },
      fromLeft: place(left.length, x),
      fromFront: place(left.width, y),
      ...(deep === null ? {} : { depth: round(1 + deep * (left.height - 2)) }),
      ...(point ? { pointAngle: 118 } : {}),
    };
  });
  return { stock, features: [...milled, ...along, ...across, ...drilled] };
});

function evenly(size: number, wanted: boolean) {
  return wanted ? { lower: round(size - 0.1), upper: round(size + 0.1) } : {};
}

/** A shoulder at each edge and two slots between, in lanes that do not touch. */
function cutsIn(
  lanes: readonly Lane[],
  width: number,
  height: number,
  along: 'length' | 'width',
  middle: boolean,
): readonly BlockFeature[] {
  const depth = (deep: number) => round(0.5 + deep * (height * 0.8 - 0.5));
  if (middle) {
    const [one] = lanes;
    if (!one?.there) return [];
    const wide = round(2 + one.wide * (width * 0.8 - 2));
    return [{ kind: 'slot', id: `${along}-mid`, along, width: wide, depth: depth(one.deep) }];
  }
  const edges = along === 'length' ? (['front', 'back'] as const) : (['left', 'right'] as const);
  return lanes.flatMap(({ there, at, wide, deep, limits }, index): readonly BlockFeature[] => {
    if (!there) return [];
    const id = `${along}-${index}`;
    const deepness = { depth: depth(deep), ...evenly(depth(deep), limits) };
    if (index < 2) {
      const edge = edges[index] ?? edges[0];
      return [
        { kind: 'shoulder', id, edge, width: round(1 + wide * (width * 0.15 - 1)), ...deepness },
      ];
    }
    const [low, high] = index === 2 ? [0.2, 0.45] : [0.55, 0.8];
    const from = round(width * (low + at * 0.1));
    const widest = width * high - from;
    return [{ kind: 'slot', id, along, from, width: round(1 + wide * (widest - 1)), ...deepness }];
  });
}

/** Each feature stock, being cut, or done; some with readings. */
export function anyStateOf(block: Block): fc.Arbitrary<PieceState> {
  const reading = fc.option(
    fc.record({
      value: tenths(1, 60),
      verdict: fc.constantFrom('within' as const, 'rework' as const, 'lost' as const),
    }),
    { nil: undefined },
  );
  const one = fc.record({
    state: fc.constantFrom('stock' as const, 'now' as const, 'done' as const),
    reading,
    widthReading: reading,
  });
  return fc.record(Object.fromEntries(block.features.map(({ id }) => [id, one])));
}
