/** The turned piece as plain data: stock, features, and how far each feature is. Lengths in mm. */

/** Lowest and highest size allowed; both or neither. */
export interface Limits {
  readonly lower?: number | undefined;
  readonly upper?: number | undefined;
}

interface Named {
  readonly id: string;
}

/** Positions are measured from the finished right-hand face, towards the chuck. */
interface Stretch extends Named {
  readonly from: number;
  readonly to: number;
  readonly lengthLower?: number | undefined;
  readonly lengthUpper?: number | undefined;
}

export interface Cylinder extends Stretch, Limits {
  readonly kind: 'cylinder';
  readonly diameter: number;
}

export interface Bore extends Named, Limits {
  readonly kind: 'bore';
  /** Where its mouth is. */
  readonly from: number;
  readonly depth: number;
  readonly diameter: number;
  /** Included angle of the drilled end in degrees; without it the bore ends flat. */
  readonly pointAngle?: number | undefined;
  /** The side its mouth opens to; right when not given. */
  readonly end?: 'left' | 'right' | undefined;
}

export interface Chamfer extends Named {
  readonly kind: 'chamfer';
  /** Where the corner was. */
  readonly at: number;
  /** The side the corner faced. */
  readonly end: 'left' | 'right';
  /** Along the axis. */
  readonly size: number;
  /** Against the axis, in degrees. */
  readonly angle: number;
  readonly internal?: boolean | undefined;
}

export interface Taper extends Stretch {
  readonly kind: 'taper';
  readonly largeDiameter: number;
  readonly smallDiameter: number;
  /** Where the small end is; right when not given. */
  readonly end?: 'left' | 'right' | undefined;
}

export interface Thread extends Stretch {
  readonly kind: 'thread';
  /** As it is written on a drawing: "M12×1.75". */
  readonly designation: string;
  readonly majorDiameter: number;
  readonly minorDiameter: number;
  readonly internal?: boolean | undefined;
}

export interface Groove extends Stretch, Limits {
  readonly kind: 'groove';
  readonly diameter: number;
}

export interface CentreDrill extends Named {
  readonly kind: 'centre-drill';
  readonly end: 'left' | 'right';
  /** Of the pilot. */
  readonly diameter: number;
  /** Of the 60 degree countersink at the face; usual proportion when not given. */
  readonly size?: number | undefined;
  readonly depth?: number | undefined;
}

/** A hole right across the axis. It is drawn as seen along its own axis: a circle, open in both halves. */
export interface CrossHole extends Named, Limits {
  readonly kind: 'cross-hole';
  /** Where its axis crosses that of the piece. */
  readonly from: number;
  readonly diameter: number;
}

export type Feature = Cylinder | Bore | Chamfer | Taper | Thread | Groove | CentreDrill | CrossHole;

export interface Piece {
  readonly stock: {
    readonly diameter: number;
    readonly length: number;
    /** Metal still in front of the finished right-hand face. */
    readonly facing?: number | undefined;
  };
  readonly features: readonly Feature[];
}

/** A measured size beside its dimension. */
export interface PieceReading {
  readonly value: number;
  readonly verdict?: 'within' | 'rework' | 'lost' | undefined;
  /** What was measured; the diameter when not given. */
  readonly of?: 'diameter' | 'length' | undefined;
}

export interface FeatureState {
  readonly state: 'stock' | 'now' | 'done';
  readonly reading?: PieceReading | undefined;
  /** Of the width of a slot or shoulder, beside that of its depth. */
  readonly widthReading?: PieceReading | undefined;
}

/** By feature id; a feature not named here is still stock. */
export type PieceState = Readonly<Record<string, FeatureState>>;

/** How far a feature is. */
export function stateOf(state: PieceState, id: string): FeatureState['state'] {
  return state[id]?.state ?? 'stock';
}

/** Length of the finished piece in mm: the farthest that any feature reaches, else the stock. */
export function pieceLength(piece: Piece): number {
  const reach = piece.features.flatMap((feature) => ('to' in feature ? [feature.to] : []));
  return reach.length > 0 ? Math.max(...reach) : piece.stock.length;
}
