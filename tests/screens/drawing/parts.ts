/** Turned parts for the drawing tests: two written by hand, and a generator of many. */
import fc from 'fast-check';
import type { Feature, Piece, PieceState } from '../../../src/screens/drawing/piece.ts';

/** Our hinge pin: head, shank with relief, bored neck. Lengths from the right face. */
export const HINGE_PIN: Piece = {
  stock: { diameter: 30, length: 110, facing: 1.5 },
  features: [
    { kind: 'cylinder', id: 'shank', from: 0, to: 55, diameter: 20, lower: 19.98, upper: 20 },
    { kind: 'cylinder', id: 'neck', from: 0, to: 22, diameter: 16, lower: 15.95, upper: 16.05 },
    { kind: 'groove', id: 'relief', from: 52, to: 55, diameter: 18.5 },
    { kind: 'cylinder', id: 'head', from: 55, to: 70, diameter: 28 },
    { kind: 'chamfer', id: 'lead', at: 0, end: 'right', size: 1, angle: 45 },
    { kind: 'bore', id: 'hole', from: 0, depth: 30, diameter: 8, pointAngle: 118 },
  ],
};

export const STUD: Piece = {
  stock: { diameter: 25, length: 140 },
  features: [
    {
      kind: 'thread',
      id: 'thread',
      from: 0,
      to: 25,
      designation: 'M16 × 2',
      majorDiameter: 16,
      minorDiameter: 13.835,
    },
    { kind: 'taper', id: 'cone', from: 29, to: 70, smallDiameter: 16, largeDiameter: 22 },
    { kind: 'cylinder', id: 'body', from: 70, to: 100, diameter: 22 },
    { kind: 'cylinder', id: 'tail', from: 100, to: 118, diameter: 12 },
    { kind: 'centre-drill', id: 'centre', end: 'right', diameter: 3.15 },
  ],
};

const hundredths = (low: number, high: number) =>
  fc.integer({ min: low * 100, max: high * 100 }).map((n) => n / 100);

interface Step {
  readonly length: number;
  readonly diameter: number;
  readonly tolerance: number;
  readonly grooved: boolean;
  readonly kind: 'cylinder' | 'taper' | 'thread';
}

const step: fc.Arbitrary<Step> = fc.record({
  length: hundredths(4, 40),
  diameter: hundredths(12, 48),
  tolerance: hundredths(0, 0.2),
  grooved: fc.boolean(),
  kind: fc.constantFrom('cylinder', 'cylinder', 'cylinder', 'taper', 'thread'),
});

interface Inside {
  readonly diameter: number;
  readonly depth: number;
  readonly point: boolean;
}

/** A shaft of up to six steps with grooves, chamfers, bores, in a stock of 50 mm. */
export const anyPiece: fc.Arbitrary<Piece> = fc
  .record({
    steps: fc.array(step, { minLength: 1, maxLength: 6 }),
    bores: fc.array(
      fc.record({ diameter: hundredths(2, 8), depth: hundredths(3, 30), point: fc.boolean() }),
      { maxLength: 2 },
    ),
    chamfered: fc.boolean(),
    spare: hundredths(0, 60),
    facing: hundredths(0, 2),
  })
  .map(({ steps, bores, chamfered, spare, facing }) => {
    const length = steps.reduce((sum, { length: one }) => sum + one, 0);
    return {
      stock: { diameter: 50, length: length + spare + facing, facing },
      features: [
        ...stepped(steps),
        ...bores.map((bore, index) => boreOf(bore, index, length)),
        ...(chamfered ? ends(length) : []),
      ],
    };
  });

/** Each feature stock, being cut, or done; some with a reading. */
export function anyState(piece: Piece): fc.Arbitrary<PieceState> {
  const one = fc.record({
    state: fc.constantFrom('stock' as const, 'now' as const, 'done' as const),
    reading: fc.option(
      fc.record({
        value: hundredths(1, 60),
        verdict: fc.constantFrom('within' as const, 'rework' as const, 'lost' as const),
        of: fc.constantFrom('diameter' as const, 'length' as const),
      }),
      { nil: undefined },
    ),
  });
  return fc.record(Object.fromEntries(piece.features.map(({ id }) => [id, one])));
}

function stepped(steps: readonly Step[]): Feature[] {
  let from = 0;
  return steps.flatMap(({ length, diameter, tolerance, grooved, kind }, index) => {
    const to = Math.round((from + length) * 100) / 100;
    const place = { from, to };
    const id = `step-${index}`;
    from = to;
    const groove: Feature[] = grooved
      ? [{ kind: 'groove', id: `groove-${index}`, from: to - 2, to, diameter: diameter - 2 }]
      : [];
    if (kind === 'taper')
      return [{ kind, id, ...place, smallDiameter: diameter - 1, largeDiameter: diameter }];
    if (kind === 'thread')
      return [
        {
          kind,
          id,
          ...place,
          designation: 'M12 × 1.75',
          majorDiameter: diameter,
          minorDiameter: diameter - 2,
        },
      ];
    const limits = tolerance > 0 ? { lower: diameter - tolerance, upper: diameter } : {};
    return [{ kind, id, ...place, diameter, ...limits }, ...groove];
  });
}

function boreOf({ diameter, depth, point }: Inside, index: number, length: number): Feature {
  return {
    kind: 'bore',
    id: `bore-${index}`,
    from: 0,
    depth: Math.min(depth, length),
    diameter,
    pointAngle: point ? 118 : undefined,
  };
}

function ends(length: number): Feature[] {
  return [
    { kind: 'chamfer', id: 'chamfer-right', at: 0, end: 'right', size: 1, angle: 45 },
    { kind: 'chamfer', id: 'chamfer-left', at: length, end: 'left', size: 0.5, angle: 30 },
  ];
}
