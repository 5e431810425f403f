/** From figures to places on a plot, and the round figures to write along an axis. */

/** Turns a figure into a place in picture units. */
export type Scale = (figure: number) => number;

/** First and last of a stretch of figures, or of places; the first may be the larger. */
export type Stretch = readonly [number, number];

/** Equal steps for equal differences. A stretch with no length puts everything in the middle. */
export function linearScale([from, to]: Stretch, [start, end]: Stretch): Scale {
  if (from === to) return () => (start + end) / 2;
  return (figure) => start + ((figure - from) / (to - from)) * (end - start);
}

/** Equal steps for equal ratios; figures must be above zero. */
export function logScale([from, to]: Stretch, places: Stretch): Scale {
  const linear = linearScale([Math.log(from), Math.log(to)], places);
  return (figure) => linear(Math.log(figure));
}

/** Round figures (1, 2 or 5 of a decade) from `from` to `to`, about `count` of them. */
export function roundFigures([from, to]: Stretch, count: number): readonly number[] {
  const step = roundStep((to - from) / Math.max(count, 1));
  if (!(step > 0)) return [from];
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: Math.max(last - first + 1, 0) }, (_, index) =>
    tidy((first + index) * step),
  );
}

/** 1, 2 and 5 of every decade between the ends, for a scale of equal ratios. */
export function decadeFigures([from, to]: Stretch): readonly number[] {
  const decades = Math.ceil(Math.log10(to / from)) + 2;
  const first = Math.floor(Math.log10(from));
  const figures = Array.from({ length: decades }, (_, index) => first + index).flatMap((decade) =>
    [1, 2, 5].map((part) => tidy(part * 10 ** decade)),
  );
  return figures.filter((figure) => figure >= from * (1 - 1e-9) && figure <= to * (1 + 1e-9));
}

/** A stretch that holds all figures, with `margin` (a share of it) free at both ends. */
export function stretchOf(figures: readonly number[], margin: number): Stretch {
  const [low, high] = [Math.min(...figures), Math.max(...figures)];
  const room = (high - low || Math.abs(high) || 1) * margin;
  return [low - room, high + room];
}

/** Leaves out the figures whose places come nearer than `apart` to one already kept. */
export function keptApart(
  figures: readonly number[],
  scale: Scale,
  apart: number,
): readonly number[] {
  const kept: number[] = [];
  for (const figure of figures)
    if (kept.every((other) => Math.abs(scale(other) - scale(figure)) >= apart)) kept.push(figure);
  return kept;
}

function roundStep(rough: number): number {
  const decade = 10 ** Math.floor(Math.log10(rough));
  const part = rough / decade;
  const round = part <= 1 ? 1 : part <= 2 ? 2 : part <= 5 ? 5 : 10;
  return round * decade;
}

/** Takes off what binary fractions add: 0.30000000000000004 is 0.3. */
function tidy(figure: number): number {
  return Number(figure.toPrecision(12));
}
