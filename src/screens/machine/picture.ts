/** What a machine picture is made of: parts with a drawing, a place to touch, and a place to point at. */
import type { ComponentChildren } from 'preact';

/** The way a part is to be moved, seen by somebody standing at the controls. */
export type Direction = (typeof DIRECTIONS)[number];

export const DIRECTIONS = [
  ...(['towards-chuck', 'away-from-chuck', 'left', 'right', 'in', 'out'] as const),
  ...(['round', 'down', 'up'] as const),
] as const;

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

/** How things stand on the machine, as far as the picture shows it. */
export interface Look {
  readonly guard: 'open' | 'closed';
}

/** One part: where it is touched, where the label's line ends, where its arrow goes, how it is drawn. */
export interface PartArt<Id extends string> {
  readonly id: Id;
  readonly touch: (look: Look) => readonly Box[];
  readonly at: Point;
  /** Centre of a straight arrow. */
  readonly arrow: Point;
  /** Centre and radii of the turning arrow; a narrow one is a turning seen from the edge. */
  readonly turn?: Point & { readonly rx: number; readonly ry: number };
  /** Inherits fill and outline from its group, so that being lit needs no second drawing. */
  readonly draw: (look: Look) => ComponentChildren;
}

export interface PictureProps<Id extends string> {
  readonly lit?: Id | undefined;
  readonly direction?: Direction | undefined;
  readonly guard?: 'open' | 'closed' | undefined;
  readonly onPart?: ((id: Id) => void) | undefined;
  /** Accessible name of the whole picture, and its tooltip. */
  readonly title: string;
}

/** Colours come from the page; with none given the picture follows the colour of the text around it. */
export const LINE = 'var(--line, currentColor)';
export const METAL = 'var(--metal, color-mix(in srgb, currentColor 14%, transparent))';
export const LIT = 'var(--lit, color-mix(in srgb, currentColor 45%, transparent))';
export const GROUND = 'var(--ground, Canvas)';
/** The one part that is red on a real machine (IEC 60204-1: emergency stop actuators are red). */
export const STOP_RED = '#c8102e';

/** Smallest side of a touch area in picture units: 25 px when the picture is 360 px wide. */
export const LEAST_TOUCH = 44;
/** Every picture is this wide; its height is its own. */
export const PICTURE_WIDTH = 640;
/** Top band kept free for the label. */
export const LABEL_BAND = 84;
