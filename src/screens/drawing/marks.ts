/** What a drawing is made of once all is worked out: lines, filled areas, arrow heads and labels. */

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** From mm along the axis (from the right face) and above it to a place in the picture. */
export type ToPicture = (z: number, r: number) => Place;

/**
 * Kinds of line, after ISO 128-2 (from memory): firm and thin in the ratio 2:1, chain line for the axis,
 * long-dash double-dot for the stock, zigzag ends on a thin line where the stock is cut short.
 */
export type Pen =
  | ('firm' | 'now' | 'planned' | 'thin' | 'hatch' | 'centre' | 'stock')
  /** Edges behind metal, dashed; broader where they are cut now. */
  | ('hidden' | 'now-hidden');

export interface Line {
  readonly pen: Pen;
  readonly points: readonly Place[];
  readonly feature?: string | undefined;
}

/** Metal that comes off now. */
export interface Area {
  readonly points: readonly Place[];
  readonly feature: string;
}

/** A filled head: its tip and the direction it points, in degrees clockwise from the right. */
export interface Head {
  readonly tip: Place;
  readonly turned: number;
}

/** The texts of one dimension with the box they fill, `x` and `y` its upper left corner. */
export interface Label extends Place {
  readonly width: number;
  readonly height: number;
  readonly parts: readonly LabelPart[];
}

/** One text of a label; `x` and `y` are the start of its base line. */
export interface LabelPart extends Place {
  readonly text: string;
  readonly width: number;
  /** The measured size: bold, in a frame, with the verdict as a word. */
  readonly reading: boolean;
}

/** A dimension: the two edges it names, the line between its arrow tips, and its text. */
export interface Dimension {
  readonly feature: string;
  readonly kind: 'diameter' | 'length' | 'note';
  /** Points on the piece's outline that are measured; one for a bore in half section and for a note. */
  readonly edges: readonly Place[];
  /** Where the arrow heads touch: the same distance from the axis or datum as the edges. */
  readonly tips: readonly Place[];
  readonly label: Label;
}

/** A drawing worked out in picture units, 0,0 at the upper left. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** Picture units a mm. */
  readonly scale: number;
  readonly textSize: number;
  readonly lines: readonly Line[];
  readonly areas: readonly Area[];
  readonly heads: readonly Head[];
  readonly dimensions: readonly Dimension[];
}

/** The half section of a turned piece. */
export interface Layout extends Drawing {
  readonly axis: number;
  /** Outline of the hatched half, closed. */
  readonly section: readonly Place[];
}

/** Length of an arrow head in picture units for a text size; ISO 129-1 ties both to the line width. */
export function headLength(textSize: number): number {
  return textSize * 0.75;
}
