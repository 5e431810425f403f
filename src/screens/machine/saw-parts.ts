/** The parts of a horizontal metal-cutting band saw in words. */
import type { PartFacts } from './picture.ts';

export type SawPart =
  | 'saw-frame'
  | 'blade'
  | 'blade-guides'
  | 'guard'
  | 'blade-tension'
  | 'down-feed'
  | 'coolant'
  | 'work'
  | 'vice'
  | 'vice-wheel'
  | 'selector'
  | 'emergency-stop'
  | 'base';

/** Each part: its name, what it is and where it is. Machines differ; the sentences say what is usual. */
export const SAW_PARTS: Readonly<Record<SawPart, PartFacts>> = {
  'saw-frame': {
    name: 'Saw frame',
    what: 'The hinged bow with the two band wheels; it comes down on the work as it cuts.',
    alsoCalled: ['bow', 'saw head', 'arm'],
  },
  blade: {
    name: 'Blade',
    what: 'The toothed band, bare only between the two guides.',
    alsoCalled: ['band'],
  },
  'blade-guides': {
    name: 'Blade guides',
    what: 'The two arms that hold the blade upright, set as near to the work as it allows.',
    alsoCalled: ['blade guide', 'guides'],
  },
  guard: {
    name: 'Wheel covers',
    what: 'The hinged covers over the band wheels; shut while the blade runs.',
    alsoCalled: ['guard', 'wheel cover', 'blade guard'],
  },
  'blade-tension': {
    name: 'Blade tension',
    what: 'The knob at the right end of the frame that tightens the blade.',
    alsoCalled: ['tension', 'tension knob'],
  },
  'down-feed': {
    name: 'Down-feed valve',
    what: 'The valve on the cylinder at the left; it sets how fast the frame comes down, and shut it holds it up.',
    alsoCalled: ['down feed', 'feed valve', 'cylinder'],
  },
  coolant: { name: 'Coolant tap', what: 'The hose and tap over the cut.', alsoCalled: ['coolant'] },
  work: {
    name: 'Work',
    what: 'The bar being cut, its end towards you.',
    alsoCalled: ['stock', 'bar'],
  },
  vice: {
    name: 'Vice',
    what: 'The two jaws on the bed that hold the bar.',
    alsoCalled: ['vise', 'jaws'],
  },
  'vice-wheel': {
    name: 'Vice handwheel',
    what: 'The wheel at the front right; it closes and opens the vice.',
    alsoCalled: ['vice wheel', 'vice handle'],
  },
  selector: {
    name: 'Switch',
    what: 'The on and off switch on the front of the base.',
    alsoCalled: ['selector', 'motor switch', 'on off switch'],
  },
  'emergency-stop': {
    name: 'Emergency stop',
    what: 'The red mushroom button on the front of the base; press it first when anything goes wrong.',
    alsoCalled: ['e stop', 'red button'],
  },
  base: {
    name: 'Base',
    what: 'The cabinet under the bed, with chip tray and coolant.',
    alsoCalled: ['stand'],
  },
};
