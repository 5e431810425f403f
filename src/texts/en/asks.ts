/** Questions to the Slate in free words: how each begins, the words inside it, and what is said when one is not whole. */

export const asksTexts = {
  area: 'asks',
  texts: {
    /** How a question begins, by what it asks for. */
    speed: ['speed', 'spindle speed'],
    drillSpeed: ['drill speed', 'drilling speed', 'speed for drilling'],
    drillFeed: ['drill feed', 'drilling feed', 'feed for drilling'],
    tapDrill: ['tap drill', 'tapping drill'],
    overWires: ['over wires', 'size over wires'],
    wires: ['wire', 'wires', 'best wire', 'best wires'],
    threadLimits: ['thread limits'],
    thread: ['thread', 'thread size', 'thread sizes'],
    limits: ['limits'],
    roughness: [
      'feed for roughness',
      'feed for ra',
      'feed for r a',
      'feed for finish',
      'feed for a roughness',
    ],
    dial: ['dial'],
    morse: ['morse', 'morse taper'],
    oneIn: ['taper one in', 'taper 1 in', 'taper of one in', 'taper of 1 in'],
    taper: ['taper', 'compound angle'],
    passes: ['passes', 'pass plan'],
    /** Behind the word for a speed these make another word of it: "high speed steel". */
    notSpeed: ['steel'],
    /** Words without weight: before the question, behind its beginning, and round a number. */
    runUp: [
      ...['what is', 'what s', 'whats', 'what', 'the', 'a', 'find', 'give me', 'tell me', 'please'],
    ],
    joining: ['for', 'of', 'with', 'is', 'from', 'a', 'an', 'the', 'to'],
    fillers: [
      ...['for', 'of', 'in', 'with', 'a', 'an', 'the', 'on', 'at', 'to', 'is', 'what'],
      ...['diameter', 'size', 'tool', 'drill', 'cutter', 'hole', 'and', 'by', 'material'],
    ],
    /** Between the numbers of a question. */
    to: ['to'],
    over: ['over', 'in', 'on'],
    long: ['long'],
    cutsOf: ['cuts of', 'in cuts of', 'with cuts of'],
    nose: [
      ...['nose', 'nose of', 'nose radius', 'nose radius of', 'with nose', 'with nose of'],
      ...['with a nose', 'with a nose of', 'with a nose radius', 'with a nose radius of'],
    ],
    by: ['by', 'times', 'x'],
    percent: ['percent', 'per cent', '%'],
    at: ['at'],
    microns: ['micron', 'microns', 'micrometre', 'micrometres', 'um'],
    number: ['number', 'taper'],
    hole: ['hole', 'bore'],
    shaft: ['shaft', 'pin'],
    radius: ['radius'],
    diameter: ['diameter'],
    /** Letters as they are heard, each with what it is. */
    letters: ['em m', 'aitch h', 'gee g', 'kay k'],
    /** What is said of an answer. */
    range: '{low} to {high}',
    rangeSaid: 'from {low} to {high}',
    passesOf: '{n} passes',
    withSize: '{word} ({size})',
    withSizeSaid: '{word}, {size}',
    drillNumber: 'number {n}',
    answer: '{answer}.',
    answerRuled: '{answer}. {limit} rules.',
    given: '{label} {text}',
    /** What is said when the question is not whole. */
    unknown:
      'Say what to work out: speed, drill speed, drill feed, tapping drill, limits, feed for roughness, taper, wires, thread, dial or passes.',
    sayDiameter: 'Say a diameter and a material: {example}.',
    sayMaterial: 'Say the material too: {example}.',
    speedExample: 'speed for thirty millimetres brass',
    drillSpeedExample: 'drill speed for eight millimetres brass',
    drillFeedExample: 'drill feed for eight millimetres brass',
    sayThread: 'Say a thread: M ten, M ten by one, quarter twenty.',
    sayTapThread: 'Say a thread: tapping drill for M ten.',
    sayClass: 'Say a size and a class: limits for twenty-five h seven shaft.',
    sayHole: 'Say hole or shaft after the class.',
    sayRoughness: 'Say both: feed for roughness one point six, nose zero point four.',
    sayDial: 'Say how much the diameter is to change: dial for zero point five.',
    sayMorse: 'Say its number: Morse taper three.',
    sayOneIn: 'Say the taper: taper of one in twenty.',
    sayTaper: 'Say both diameters and the length: taper from thirty to twenty-five over fifty.',
    sayPasses: 'Say it whole: passes from sixty to forty-two in cuts of two.',
  },
} as const;
