/** Draws diameters at the side and notes from above, once it is known where each label goes. */
import type { Callout } from './callouts.ts';
import type { Dimension, Head, Label, Line, Place, ToPicture } from './marks.ts';
import { headLength } from './marks.ts';

export interface Drawn {
  readonly lines: readonly Line[];
  readonly heads: readonly Head[];
  readonly dimension: Dimension;
}

export interface CalloutPlace {
  readonly pole: number;
  readonly label: Label;
  /** Where the leader of a note bends to its pole. */
  readonly bend: number;
  readonly textSize: number;
}

/** How far a line goes beyond what it ends at. */
const BEYOND = 4;

/** A diameter between extension lines, its dimension line going up to the label. */
export function drawCallout(callout: Callout, place: CalloutPlace, to: ToPicture): Drawn {
  return callout.side === 'over' ? note(callout, place, to) : diameter(callout, place, to);
}

function diameter(callout: Callout, place: CalloutPlace, to: ToPicture): Drawn {
  const { pole, textSize } = place;
  const edges = callout.edges.map(({ z, r }) => to(z, r));
  const tips = edges.map(({ y }) => ({ x: pole, y }));
  const axis = to(0, 0).y;
  const [upper, lower] = [tips[0]?.y ?? axis, tips[1]?.y];
  const outsideHeads = lower !== undefined && lower - upper < 3 * headLength(textSize);
  const foot = lower === undefined ? axis + BEYOND * 2 : lower + (outsideHeads ? textSize : 0);
  const beyond = callout.side === 'right' ? BEYOND : -BEYOND;
  return {
    lines: [
      ...edges.map((edge) => thin(callout, [edge, { x: pole + beyond, y: edge.y }])),
      thin(callout, [
        { x: pole, y: foot },
        { x: pole, y: shelf(place) },
      ]),
      thin(callout, shelfEnds(place)),
    ],
    heads: tips.map((tip, index) => ({
      tip,
      turned: (index === 0) !== outsideHeads ? -90 : 90,
    })),
    dimension: { feature: callout.feature, kind: 'diameter', edges, tips, label: place.label },
  };
}

function note(callout: Callout, place: CalloutPlace, to: ToPicture): Drawn {
  const edges = callout.edges.map(({ z, r }) => to(z, r));
  const tip = edges[0] ?? { x: place.pole, y: place.bend };
  const bend = { x: place.pole, y: Math.min(place.bend, tip.y) };
  const turned = (Math.atan2(tip.y - bend.y, tip.x - bend.x) * 180) / Math.PI;
  return {
    lines: [
      thin(callout, [tip, bend, { x: place.pole, y: shelf(place) }]),
      thin(callout, shelfEnds(place)),
    ],
    heads: [{ tip, turned: bend.y === tip.y && bend.x === tip.x ? 90 : turned }],
    dimension: { feature: callout.feature, kind: 'note', edges, tips: [tip], label: place.label },
  };
}

/** The line the label stands on. */
function shelf({ label }: CalloutPlace): number {
  return label.y + label.height;
}

function shelfEnds(place: CalloutPlace): readonly Place[] {
  const { label, pole } = place;
  const y = shelf(place);
  return [
    { x: Math.min(label.x, pole), y },
    { x: Math.max(label.x + label.width, pole), y },
  ];
}

function thin({ feature }: Callout, points: readonly Place[]): Line {
  return { pen: 'thin', points, feature };
}
