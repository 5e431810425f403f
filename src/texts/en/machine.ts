/** The machine on the Bench: what may be touched, which way it goes, and each part of a pictured machine with what it is and where. Machines differ; the sentences say what is usual. */

export const machineTexts = {
  area: 'machine',
  texts: {
    touchPart: 'Touch a part to learn what it is.',
    pieceSoFar: '{title}, as far as it is',
    'way.towards-chuck': 'towards the chuck',
    'way.away-from-chuck': 'away from the chuck',
    'way.left': 'to the left',
    'way.right': 'to the right',
    'way.in': 'in, away from you',
    'way.out': 'out, towards you',
    'way.round': 'turn it',
    'way.down': 'down',
    'way.up': 'up',
    'lathe.headstock': [
      'Headstock',
      'The fixed box at the left end that holds the spindle and its gears.',
    ],
    'lathe.gear-levers': [
      'Speed levers',
      'The levers on the front of the headstock that set the spindle speed; move them only when the spindle stands still.',
    ],
    'lathe.selector': [
      'Motor selector',
      'The switch on the headstock for motor forward, off and reverse.',
    ],
    'lathe.emergency-stop': [
      'Emergency stop',
      'The red mushroom button on the headstock; press it first when anything goes wrong.',
    ],
    'lathe.chuck': [
      'Chuck',
      'The round clamp with jaws on the spindle nose, to the right of the headstock; it grips the work.',
    ],
    'lathe.key-hole': [
      'Key hole',
      'The square hole in the rim of the chuck where the chuck key goes; the key never stays in it.',
    ],
    'lathe.guard': [
      'Chuck guard',
      'The hinged shield over the chuck; closed, it covers the jaws from the front and above.',
    ],
    'lathe.work': ['Work', 'The piece being turned, held in the chuck jaws.'],
    'lathe.tool-post': [
      'Tool post',
      'The block on top of the compound slide that clamps the cutting tool.',
    ],
    'lathe.tool': [
      'Tool',
      'The cutting tool in the tool post, its edge at the height of the spindle centre.',
    ],
    'lathe.cross-slide': [
      'Cross slide',
      'The slide on the carriage that moves the tool in and out, square to the bed.',
    ],
    'lathe.cross-dial': [
      'Cross slide dial',
      'The graduated ring behind the cross slide handle, at the front of the carriage; it shows how far the tool went in or out.',
    ],
    'lathe.compound': [
      'Compound slide',
      'The small swivelling slide on top of the cross slide, under the tool post; it cuts short tapers.',
    ],
    'lathe.carriage': [
      'Carriage',
      'The assembly that rides along the bed and carries the slides: saddle on top, apron in front.',
    ],
    'lathe.carriage-wheel': [
      'Carriage handwheel',
      'The large wheel on the left of the apron; it winds the carriage along the bed.',
    ],
    'lathe.half-nut-lever': [
      'Half-nut lever',
      'The lever on the right of the apron that closes the half-nuts on the lead screw, for threading.',
    ],
    'lathe.feed-lever': [
      'Feed lever',
      'The lever in the middle of the apron that puts the power feed in and out.',
    ],
    'lathe.lead-screw': [
      'Lead screw',
      'The long threaded shaft along the front of the bed that drives the carriage for threading.',
    ],
    'lathe.tailstock': [
      'Tailstock',
      'The casting at the right end of the bed; it slides along and clamps, and holds a centre or a drill.',
    ],
    'lathe.quill': [
      'Tailstock quill',
      'The barrel that comes out of the tailstock towards the work, with a centre or drill in its taper.',
    ],
    'lathe.tailstock-wheel': [
      'Tailstock handwheel',
      'The wheel at the far right of the tailstock; it winds the quill out and back.',
    ],
    'lathe.bed': [
      'Bed',
      'The long heavy casting between headstock and end that everything stands on.',
    ],
    'lathe.ways': ['Ways', 'The ground rails on top of the bed that guide carriage and tailstock.'],
    'mill.head': ['Head', 'The top of the mill, with motor, gears and spindle, over the table.'],
    'mill.drawbar': [
      'Draw bar',
      'The nut on top of the head; its long screw goes down through the spindle and pulls the collet tight.',
    ],
    'mill.gear-levers': [
      'Speed levers',
      'The levers on the front of the head that set the spindle speed; move them only when the spindle stands still.',
    ],
    'mill.selector': [
      'Motor selector',
      'The switch on the control box at the left of the head for forward, off and reverse.',
    ],
    'mill.emergency-stop': [
      'Emergency stop',
      'The red mushroom button on the control box; press it first when anything goes wrong.',
    ],
    'mill.quill': ['Quill', 'The sleeve that carries the spindle down out of the head.'],
    'mill.quill-lever': [
      'Quill lever',
      'The lever at the right of the head that brings the quill down, as for drilling.',
    ],
    'mill.cutter': [
      'Cutter',
      'The milling cutter in its collet or chuck at the lower end of the spindle.',
    ],
    'mill.guard': [
      'Cutter guard',
      'The clear shield round the cutter; closed, it stands between you and the cutter.',
    ],
    'mill.work': ['Work', 'The piece being milled, held in the vice.'],
    'mill.vice': ['Vice', 'The clamp with two jaws, bolted on the table.'],
    'mill.table': ['Table', 'The long slotted plate that carries the work, left to right.'],
    'mill.table-wheel': [
      'Table handwheel',
      'The wheel at the left end of the table; it winds the table left and right.',
    ],
    'mill.saddle': ['Saddle', 'The slide under the table that moves it in and out.'],
    'mill.cross-wheel': [
      'Cross handwheel',
      'The wheel at the front of the knee; it winds the table in and out.',
    ],
    'mill.knee': ['Knee', 'The bracket on the column that carries saddle and table up and down.'],
    'mill.knee-crank': [
      'Knee crank',
      'The crank at the front right of the knee; it raises and lowers the table.',
    ],
    'mill.column': ['Column', 'The upright casting at the back that everything hangs on.'],
    'drill-press.head': ['Head', 'The casting at the top of the column with spindle and controls.'],
    'drill-press.belt-cover': [
      'Belt cover',
      'The lid on top of the head over belt and pulleys; it stays shut while the motor runs.',
    ],
    'drill-press.selector': ['Switch', 'The on and off switch on the front of the head.'],
    'drill-press.emergency-stop': [
      'Emergency stop',
      'The red mushroom button on the head; press it first when anything goes wrong.',
    ],
    'drill-press.feed-handles': [
      'Feed handles',
      'The three spokes at the right of the head; pull them towards you and the drill goes down.',
    ],
    'drill-press.depth-stop': [
      'Depth stop',
      'The threaded rod with two nuts at the left of the quill; it ends the travel at the set depth.',
    ],
    'drill-press.quill': ['Quill', 'The sleeve that carries the spindle down out of the head.'],
    'drill-press.chuck': [
      'Drill chuck',
      'The clamp at the lower end of the spindle that grips the drill.',
    ],
    'drill-press.key-hole': [
      'Key hole',
      'The hole in the side of the drill chuck for the chuck key; the key never stays in it.',
    ],
    'drill-press.drill': ['Drill', 'The twist drill in the chuck.'],
    'drill-press.guard': [
      'Chuck guard',
      'The clear shield round chuck and drill; closed, it hangs in front of them.',
    ],
    'drill-press.work': ['Work', 'The piece being drilled, clamped in the vice.'],
    'drill-press.vice': [
      'Vice',
      'The clamp that holds the work; bolted or stopped against turning on the table.',
    ],
    'drill-press.table': ['Table', 'The plate on the column that carries vice and work.'],
    'drill-press.table-crank': [
      'Table crank',
      'The crank at the right behind the table; it winds the table up and down the column.',
    ],
    'drill-press.column': ['Column', 'The round pillar from base to head.'],
    'drill-press.base': ['Base', 'The heavy foot on the floor, bolted down.'],
    'grinder.wheels': [
      'Wheels',
      'The two abrasive wheels, one at each end of the motor: usually coarse and fine.',
    ],
    'grinder.wheel-guard': [
      'Wheel guards',
      'The steel housings that close in the wheels except at the front; they hold the pieces if a wheel bursts.',
    ],
    'grinder.tongue-guard': [
      'Tongue guard',
      'The adjustable plate at the top of the wheel opening, set close to the wheel as it wears.',
    ],
    'grinder.tool-rest': [
      'Work rest',
      'The small table in front of each wheel that the work lies on, set close to the wheel.',
    ],
    'grinder.guard': [
      'Eye shield',
      'The clear screen over the front of each wheel; safety glasses are worn behind it all the same.',
    ],
    'grinder.motor': ['Motor', 'The housing between the wheels.'],
    'grinder.selector': ['Switch', 'The on and off switch on the front of the pedestal.'],
    'grinder.emergency-stop': [
      'Emergency stop',
      'The red mushroom button on the pedestal; press it first when anything goes wrong.',
    ],
    'grinder.water-pot': ['Water pot', 'The cup on the pedestal for cooling the work.'],
    'grinder.pedestal': ['Pedestal', 'The column it stands on, bolted to the floor.'],
    'band-saw.saw-frame': [
      'Saw frame',
      'The hinged bow with the two band wheels; it comes down on the work as it cuts.',
    ],
    'band-saw.blade': ['Blade', 'The toothed band, bare only between the two guides.'],
    'band-saw.blade-guides': [
      'Blade guides',
      'The two arms that hold the blade upright, set as near to the work as it allows.',
    ],
    'band-saw.guard': [
      'Wheel covers',
      'The hinged covers over the band wheels; shut while the blade runs.',
    ],
    'band-saw.blade-tension': [
      'Blade tension',
      'The knob at the right end of the frame that tightens the blade.',
    ],
    'band-saw.down-feed': [
      'Down-feed valve',
      'The valve on the cylinder at the left; it sets how fast the frame comes down, and shut it holds it up.',
    ],
    'band-saw.coolant': ['Coolant tap', 'The hose and tap over the cut.'],
    'band-saw.work': ['Work', 'The bar being cut, its end towards you.'],
    'band-saw.vice': ['Vice', 'The two jaws on the bed that hold the bar.'],
    'band-saw.vice-wheel': [
      'Vice handwheel',
      'The wheel at the front right; it closes and opens the vice.',
    ],
    'band-saw.selector': ['Switch', 'The on and off switch on the front of the base.'],
    'band-saw.emergency-stop': [
      'Emergency stop',
      'The red mushroom button on the front of the base; press it first when anything goes wrong.',
    ],
    'band-saw.base': ['Base', 'The cabinet under the bed, with chip tray and coolant.'],
  },
} as const;
