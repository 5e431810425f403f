/** The parts of a manual centre lathe in words, for pictures and for "where is the tailstock?". */
import type { PartFacts } from './picture.ts';

export type LathePart =
  | 'headstock'
  | 'gear-levers'
  | 'selector'
  | 'emergency-stop'
  | 'chuck'
  | 'key-hole'
  | 'guard'
  | 'work'
  | 'tool-post'
  | 'tool'
  | 'cross-slide'
  | 'cross-dial'
  | 'compound'
  | 'carriage'
  | 'carriage-wheel'
  | 'half-nut-lever'
  | 'feed-lever'
  | 'lead-screw'
  | 'tailstock'
  | 'quill'
  | 'tailstock-wheel'
  | 'bed'
  | 'ways';

/** Each part: its name, what it is and where it is. Machines differ; the sentences say what is usual. */
export const LATHE_PARTS: Readonly<Record<LathePart, PartFacts>> = {
  headstock: {
    name: 'Headstock',
    what: 'The fixed box at the left end that holds the spindle and its gears.',
  },
  'gear-levers': {
    name: 'Speed levers',
    what: 'The levers on the front of the headstock that set the spindle speed; move them only when the spindle stands still.',
    alsoCalled: ['gear levers', 'speed lever', 'gear lever'],
  },
  selector: {
    name: 'Motor selector',
    what: 'The switch on the headstock for motor forward, off and reverse.',
    alsoCalled: ['selector', 'direction selector', 'motor switch'],
  },
  'emergency-stop': {
    name: 'Emergency stop',
    what: 'The red mushroom button on the headstock; press it first when anything goes wrong.',
    alsoCalled: ['e stop', 'red button'],
  },
  chuck: {
    name: 'Chuck',
    what: 'The round clamp with jaws on the spindle nose, to the right of the headstock; it grips the work.',
  },
  'key-hole': {
    name: 'Key hole',
    what: 'The square hole in the rim of the chuck where the chuck key goes; the key never stays in it.',
    alsoCalled: ['chuck key', 'chuck key hole', 'key socket'],
  },
  guard: {
    name: 'Chuck guard',
    what: 'The hinged shield over the chuck; closed, it covers the jaws from the front and above.',
    alsoCalled: ['guard', 'chuck shield'],
  },
  work: {
    name: 'Work',
    what: 'The piece being turned, held in the chuck jaws.',
    alsoCalled: ['workpiece', 'work piece', 'stock', 'bar'],
  },
  'tool-post': {
    name: 'Tool post',
    what: 'The block on top of the compound slide that clamps the cutting tool.',
    alsoCalled: ['tool holder'],
  },
  tool: {
    name: 'Tool',
    what: 'The cutting tool in the tool post, its edge at the height of the spindle centre.',
    alsoCalled: ['cutting tool', 'tool bit'],
  },
  'cross-slide': {
    name: 'Cross slide',
    what: 'The slide on the carriage that moves the tool in and out, square to the bed.',
  },
  'cross-dial': {
    name: 'Cross slide dial',
    what: 'The graduated ring behind the cross slide handle, at the front of the carriage; it shows how far the tool went in or out.',
    alsoCalled: ['cross dial', 'cross slide handle', 'dial'],
  },
  compound: {
    name: 'Compound slide',
    what: 'The small swivelling slide on top of the cross slide, under the tool post; it cuts short tapers.',
    alsoCalled: ['compound', 'top slide', 'compound rest'],
  },
  carriage: {
    name: 'Carriage',
    what: 'The assembly that rides along the bed and carries the slides: saddle on top, apron in front.',
    alsoCalled: ['saddle', 'apron'],
  },
  'carriage-wheel': {
    name: 'Carriage handwheel',
    what: 'The large wheel on the left of the apron; it winds the carriage along the bed.',
    alsoCalled: ['carriage wheel', 'apron handwheel'],
  },
  'half-nut-lever': {
    name: 'Half-nut lever',
    what: 'The lever on the right of the apron that closes the half-nuts on the lead screw, for threading.',
    alsoCalled: ['half nuts', 'half nut'],
  },
  'feed-lever': {
    name: 'Feed lever',
    what: 'The lever in the middle of the apron that puts the power feed in and out.',
    alsoCalled: ['power feed lever', 'feed clutch'],
  },
  'lead-screw': {
    name: 'Lead screw',
    what: 'The long threaded shaft along the front of the bed that drives the carriage for threading.',
  },
  tailstock: {
    name: 'Tailstock',
    what: 'The casting at the right end of the bed; it slides along and clamps, and holds a centre or a drill.',
  },
  quill: {
    name: 'Tailstock quill',
    what: 'The barrel that comes out of the tailstock towards the work, with a centre or drill in its taper.',
    alsoCalled: ['quill', 'barrel', 'tailstock barrel', 'centre'],
  },
  'tailstock-wheel': {
    name: 'Tailstock handwheel',
    what: 'The wheel at the far right of the tailstock; it winds the quill out and back.',
    alsoCalled: ['tailstock wheel', 'quill handwheel'],
  },
  bed: {
    name: 'Bed',
    what: 'The long heavy casting between headstock and end that everything stands on.',
  },
  ways: {
    name: 'Ways',
    what: 'The ground rails on top of the bed that guide carriage and tailstock.',
    alsoCalled: ['bedways', 'bed ways', 'slideways'],
  },
};
