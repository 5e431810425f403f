/** What a machine picture is made of: parts with a drawing, a place to touch, and a place to point at. */
import type { ComponentChildren } from 'preact';

/** The way a part is to be moved, seen by somebody standing at the controls. */
export type Direction =
  | 'towards-chuck'
  | 'away-from-chuck'
  | 'left'
  | 'right'
  | 'in'
  | 'out'
  | 'round'
  | 'down'
  | 'up';

/** A part in words: its name, one sentence what it is and where, and other names in the shop. */
export interface PartFacts {
  readonly name: string;
  readonly what: string;
  readonly alsoCalled?: readonly string[];
}

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
  /** The words on the picture, for another language. English when not given. */
  readonly words?: PictureWords<Id> | undefined;
}

export interface PictureWords<Id extends string> {
  readonly parts: Readonly<Record<Id, PartFacts>>;
  readonly directions: Readonly<Record<Direction, string>>;
}

export const DIRECTIONS: Readonly<Record<Direction, string>> = {
  'towards-chuck': 'towards the chuck',
  'away-from-chuck': 'away from the chuck',
  left: 'to the left',
  right: 'to the right',
  in: 'in, away from you',
  out: 'out, towards you',
  round: 'turn it',
  down: 'down',
  up: 'up',
};

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

/** Finds the part somebody asked for by name: "tailstock", "the saddle", "half nut lever". */
export function partCalled<Id extends string>(
  parts: Readonly<Record<Id, PartFacts>>,
  asked: string,
): Id | undefined {
  const wanted = plain(asked);
  return (Object.keys(parts) as Id[]).find((id) =>
    [id, parts[id].name, ...(parts[id].alsoCalled ?? [])].some((name) => plain(name) === wanted),
  );
}

function plain(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
    .replace(/^(the|a|an) /, '');
}
