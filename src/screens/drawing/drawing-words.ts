/** The few words on a drawing, in one place so that another language can replace them. */

export interface DrawingWords {
  readonly decimal: string;
  readonly now: string;
  readonly deep: string;
  /** Of a hole that goes right across. */
  readonly through: string;
  readonly wide: string;
  readonly taper: string;
  readonly to: string;
  readonly centre: string;
  readonly within: string;
  readonly rework: string;
  readonly lost: string;
  /** Names the drawing for a reader who cannot see it. */
  readonly drawing: string;
  readonly done: string;
  readonly stock: string;
  readonly measured: string;
}

export const ENGLISH_DRAWING: DrawingWords = {
  decimal: '.',
  now: 'now',
  deep: 'deep',
  through: 'through',
  wide: 'wide',
  taper: 'taper',
  to: 'to',
  centre: 'centre',
  within: 'within',
  rework: 'rework',
  lost: 'lost',
  drawing: 'Half-section drawing',
  done: 'done',
  stock: 'not cut yet',
  measured: 'measured',
};
