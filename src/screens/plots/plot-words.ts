/** The words on plots, in one place so that another language can replace them. */

export interface PlotWords {
  readonly decimal: string;
  readonly diameter: string;
  readonly speed: string;
  readonly feed: string;
  readonly roughness: string;
  readonly wanted: string;
  readonly set: string;
  readonly noSpeed: string;
  readonly pass: string;
  readonly finish: string;
  readonly side: string;
  readonly done: string;
  readonly now: string;
  readonly next: string;
  readonly more: string;
  readonly within: string;
  readonly rework: string;
  readonly lost: string;
  readonly reading: string;
  readonly noReading: string;
  readonly mean: string;
  readonly range: string;
  readonly piece: string;
  readonly outside: string;
}

export const ENGLISH_PLOTS: PlotWords = {
  decimal: '.',
  diameter: 'diameter, mm',
  speed: 'rev/min',
  feed: 'feed, mm/rev',
  roughness: 'Ra in theory, µm',
  wanted: 'wanted',
  set: 'set',
  noSpeed: 'no speed on the card is safe here',
  pass: 'Pass',
  finish: 'Finish',
  side: 'a side',
  done: 'done',
  now: 'now',
  next: 'next',
  more: 'more',
  within: 'within',
  rework: 'rework',
  lost: 'lost',
  reading: 'reading',
  noReading: 'not measured yet',
  mean: 'mean',
  range: 'range',
  piece: 'subgroup',
  outside: 'outside its limits',
};

/** A figure with at most `decimals` decimals, none that say nothing. */
export function figure(value: number, decimals: number, words: PlotWords): string {
  return String(Number(value.toFixed(decimals))).replace('.', words.decimal);
}

/** A figure with exactly `decimals` decimals, as sizes are written. */
export function sizeFigure(value: number, decimals: number, words: PlotWords): string {
  return value.toFixed(decimals).replace('.', words.decimal);
}
