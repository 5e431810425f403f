/**
 * Flows that must be refused. Each row changes a good flow; » stands where the fault must point, and the
 * sentence beside it was written by hand: what an instructor who is no programmer must read.
 */

import type { Edit } from './marked.ts';

export const goodFlow = `{
  "followrest": "flow",
  "version": 1,
  "id": "small",
  "revision": 1,
  "title": "Small",
  "about": "",
  "machineKind": "lathe",
  "inputs": [
    { "id": "metal", "label": "Metal", "options": ["low-carbon-steel", "free-cutting-brass"], "default": "low-carbon-steel" },
    { "id": "bar", "label": "Bar", "quantity": "length", "unit": "mm", "min": 18, "max": 40, "default": 25 }
  ],
  "workings": [
    { "id": "surface", "label": "Surface speed", "rule": "cutting-speed",
      "given": { "material": { "input": "metal" }, "tool": { "word": "hss" }, "operation": { "word": "turn" } } },
    { "id": "rpm", "label": "Speed", "rule": "card-speed",
      "given": { "diameter": { "input": "bar" }, "surfaceSpeed": { "working": "surface" }, "speeds": { "card": "speeds" } } }
  ],
  "gates": {
    "still": { "spindle": "stopped" },
    "ready": { "spindle": "stopped", "guard": "closed" }
  },
  "steps": [
    { "kind": "tell", "id": "begin", "title": "Begin", "say": "Say next." },
    { "kind": "measure", "id": "gauge", "title": "Measure", "say": "Measure the bar.", "gates": ["still"],
      "reading": { "id": "now", "label": "Now", "unit": "mm", "decimals": 2, "min": { "is": 17, "unit": "mm" }, "max": { "is": 41, "unit": "mm" } } },
    { "kind": "do", "id": "mount", "title": "Mount", "say": "Grip {bar}.", "gates": ["still"], "hands": true, "ends": { "work": "clamped" } },
    { "kind": "choose", "id": "which", "title": "Which", "say": "Which?",
      "options": [{ "id": "a", "word": "this way", "next": "turn" }, { "id": "b", "word": "that way", "next": "end" }] },
    { "kind": "cut", "id": "turn", "title": "Turn", "say": "Turn.", "gates": ["ready"], "speed": { "working": "rpm" } }
  ]
}
`;

export interface BadRow {
  readonly what: string;
  readonly edits: readonly Edit[];
  /** "path — sentence", one for each mark. */
  readonly faults: readonly string[];
}

const row = (what: string, edit: Edit | readonly Edit[], ...faults: readonly string[]): BadRow => ({
  what,
  edits: typeof edit[0] === 'string' ? [edit as Edit] : (edit as readonly Edit[]),
  faults,
});

const notJson = 'This is not JSON yet.';
const facts =
  'eyes, clothing, emergency-stop, spindle, work, chuck-key, turned-by-hand, tool-lock, tool-place, tailstock, speed, guard, hands';
const stepKeys =
  'kind, id, title, say, long, short, why, cautions, part, direction, gates, needs, remedies, hands, release, moment, figures, makes, question, next';

/** Text that is no JSON: one fault, at the place where the hand slipped. */
export const badText: readonly BadRow[] = [
  row(
    'a comma too many',
    ['"guard": "closed" }\n  },', '"guard": "closed" },\n  »},'],
    `$ — ${notJson} A comma stands before this "}" with nothing after it. Take the comma out.`,
  ),
  row(
    'a comma missing after text',
    ['"small",\n  "rev', '"small"\n  »"rev'],
    `$ — ${notJson} A comma (or, after a key, a colon) is missing before this.`,
  ),
  row(
    'a comma missing after an object',
    ['"stopped" },\n    "ready"', '"stopped" }\n    »"ready"'],
    `$ — ${notJson} A comma is missing before this.`,
  ),
  row(
    'two commas',
    ['"small",', '"small",»,'],
    `$ — ${notJson} Nothing stands before this comma. Take it out.`,
  ),
  row(
    'a value missing',
    ['"guard": "closed" }', '"guard": »}'],
    `$ — ${notJson} A value is missing before this "}".`,
  ),
  row(
    'single quotes',
    ['"Small"', "»'Small'"],
    `$ — ${notJson} Text stands in straight double quotes, "like this"; here is '.`,
  ),
  row(
    'quotes of a word processor',
    ['"Small"', '»“Small”'],
    `$ — ${notJson} Text stands in straight double quotes, "like this"; here is “.`,
  ),
  row(
    'a remark',
    ['"revision": 1,', '"revision": 1, »// mine'],
    `$ — ${notJson} JSON has no comments: take the remark out.`,
  ),
  row(
    'a word without quotes',
    ['"Small"', '»Small'],
    `$ — ${notJson} Put "Small" in double quotes, or write a number, true, false or null.`,
  ),
  row(
    'a number with a plus',
    ['"min": 18', '"min": »+18'],
    `$ — ${notJson} A number is written like 12, 0.5 or -3.`,
  ),
  row(
    'a stray backslash',
    ['"Say next."', '"Say »\\quick."'],
    `$ — ${notJson} "\\q" means nothing in JSON. For a backslash write two: "\\\\".`,
  ),
  row(
    'a text that is never closed',
    ['"Say next." },', '»"Say next. },'],
    `$ — ${notJson} The text that begins here is never closed. Put " where it ends.`,
  ),
  row(
    'an object that is never closed',
    [
      ['{\n  "followrest"', '»{\n  "followrest"'],
      ['  ]\n}\n', '  ]\n'],
    ],
    `$ — ${notJson} This "{" is never closed. Put } where it ends.`,
  ),
  row(
    'a list closed as an object',
    ['["ready"], "speed"', '»["ready"}, "speed"'],
    `$ — ${notJson} This "[" is never closed. Put ] where it ends.`,
  ),
  row(
    'one bracket too many',
    ['  ]\n}\n', '  ]\n}\n»}\n'],
    `$ — ${notJson} This "}" closes nothing that is open here. Take it out, or open its pair.`,
  ),
  row(
    'a key that stands twice',
    ['"id": "begin",', '"id": "begin", »"id": "start",'],
    '$.steps[0].id — The key "id" stands twice here. Keep one of them.',
  ),
  row(
    '__proto__ at the root',
    ['"about": "",', '"about": "", »"__proto__": { "admin": true },'],
    '$.__proto__ — The key "__proto__" is never allowed. Give it another name.',
  ),
  row(
    'constructor among the gates',
    ['"still": {', '»"constructor": {}, "still": {'],
    '$.gates.constructor — The key "constructor" is never allowed. Give it another name.',
  ),
  row(
    'prototype deep in a working',
    ['"tool": { "word": "hss" }', '"tool": { »"prototype": {}, "word": "hss" }'],
    '$.workings[0].given.tool.prototype — The key "prototype" is never allowed. Give it another name.',
  ),
  row(
    '__proto__ written with an escape',
    ['"say": "Say next."', '»"__\\u0070roto__": 1, "say": "Say next."'],
    '$.steps[0].__proto__ — The key "__proto__" is never allowed. Give it another name.',
  ),
];

/** JSON that is no flow: wrong keys and wrong kinds of value. */
export const badShape: readonly BadRow[] = [
  row(
    'another kind of file',
    ['"followrest": "flow"', '»"followrest": "machine-card"'],
    '$.followrest — This file is a machine-card; a flow is wanted here. Choose another file.',
  ),
  row(
    'a file of somebody else',
    ['"followrest": "flow"', '»"followrest": "recipe"'],
    '$.followrest — Expected "followrest": "flow", found "recipe".',
  ),
  row(
    'no kind of file',
    ['{\n  "followrest": "flow",', '»{'],
    '$ — What the file is must be said first. Add "followrest": "flow" at the top.',
  ),
  row(
    'a later version',
    ['"version": 1', '»"version": 2'],
    '$.version — Version 2 cannot be read: this tool reads "version": 1.',
  ),
  row(
    'no version',
    ['{\n  "followrest": "flow",\n  "version": 1,', '»{\n  "followrest": "flow",'],
    '$ — The version is missing. Add "version": 1 under "followrest".',
  ),
  row(
    'a missing key',
    [
      '    { "kind": "tell", "id": "begin", "title": "Begin",',
      '    »{ "kind": "tell", "id": "begin",',
    ],
    '$.steps[0].title — "title" is missing here. Add it: text in double quotes.',
  ),
  row(
    'a missing choice of words',
    ['{ "id": "a", "word"', '»{ "id": "a", »"wrd"'],
    '$.steps[3].options[0].word — "word" is missing here. Add it: text in double quotes.',
    '$.steps[3].options[0].wrd — The key "wrd" is not known here. Did you mean "word"?',
  ),
  row(
    'a key misspelt',
    ['"hands": true', '»"hand": true'],
    '$.steps[2].hand — The key "hand" is not known here. Did you mean "hands"?',
  ),
  row(
    'a key from nowhere',
    ['"say": "Say next."', '"say": "Say next.", »"colour-of-apron": 7'],
    `$.steps[0]["colour-of-apron"] — The key "colour-of-apron" is not known here. Take it out. Known here: ${stepKeys}.`,
  ),
  row(
    'a key of another kind of step',
    ['"say": "Say next."', '"say": "Say next.", »"speed": { "card": "topSpeed" }'],
    `$.steps[0].speed — The key "speed" is not known here. Take it out. Known here: ${stepKeys}.`,
  ),
  row(
    'a number for a text',
    ['"title": "Begin"', '»"title": 5'],
    '$.steps[0].title — Expected text in double quotes, found 5.',
  ),
  row(
    'a text for a number',
    ['"min": 18', '»"min": "18 mm"'],
    '$.inputs[1].min — Expected a number, found "18 mm".',
  ),
  row(
    'a text for yes or no',
    ['"hands": true', '»"hands": "yes"'],
    '$.steps[2].hands — Expected true or false, found "yes".',
  ),
  row(
    'one gate without its list',
    ['"gates": ["ready"]', '»"gates": "ready"'],
    '$.steps[4].gates — Expected a list in [ ], found "ready".',
  ),
  row(
    'half a revision',
    ['"revision": 1', '»"revision": 1.5'],
    '$.revision — Expected a whole number, found 1.5.',
  ),
  row(
    'a title that is too long',
    ['"title": "Begin"', `»"title": "${'B'.repeat(61)}"`],
    '$.steps[0].title — Expected at most 60 characters, found 61.',
  ),
  row(
    'nothing to say',
    ['"say": "Say next."', '»"say": ""'],
    '$.steps[0].say — Expected at least 1 characters, found 0.',
  ),
  row(
    'one option alone',
    [
      ['"options": [{', '»"options": [{'],
      [', { "id": "b", "word": "that way", "next": "end" }]', ']'],
    ],
    '$.steps[3].options — Expected at least 2 entries, found 1.',
  ),
  row(
    'too many decimals',
    ['"decimals": 2', '»"decimals": 5'],
    '$.steps[1].reading.decimals — Expected at most 4, found 5.',
  ),
  row(
    'an unknown kind of step',
    ['"kind": "measure"', '»"kind": "mesure"'],
    '$.steps[1].kind — Expected a step kind (tell, check, do, measure, choose, cut, inspect, passes), found "mesure". Did you mean "measure"?',
  ),
  row(
    'a step without a kind',
    ['{ "kind": "tell", "id": "begin"', '»{ "id": "begin"'],
    '$.steps[0].kind — Expected a step kind (tell, check, do, measure, choose, cut, inspect, passes), found nothing.',
  ),
  row(
    'an id with a capital',
    ['"id": "begin"', '»"id": "Begin"'],
    '$.steps[0].id — Expected an id: lower-case letters, digits and single hyphens; found "Begin".',
  ),
  row(
    'a fact with a capital',
    ['"guard": "closed"', '»"Guard": "closed"'],
    '$.gates.ready.Guard — Expected an id: lower-case letters, digits and single hyphens; found "Guard".',
  ),
  row(
    'a name that is taken by the language',
    ['"id": "bar"', '»"id": "toString"'],
    '$.inputs[1].id — Expected another name: this one has a meaning of its own in the program; found "toString".',
  ),
  row(
    'a phrase with a capital',
    ['"word": "this way"', '»"word": "This way"'],
    '$.steps[3].options[0].word — Expected words to say: small letters and spaces only; found "This way".',
  ),
  row(
    'a phrase with a digit',
    ['"word": "that way"', '»"word": "way 2"'],
    '$.steps[3].options[1].word — Expected words to say: small letters and spaces only; found "way 2".',
  ),
  row(
    'a formula for a value',
    ['"speed": { "working": "rpm" }', '»"speed": "1000 * v / d"'],
    '$.steps[4].speed — Expected where the value comes from, such as {"input": "barDiameter"}, {"working": "turnSpeed"} or {"is": 2, "unit": "mm"}; found "1000 * v / d".',
  ),
  row(
    'a value from a misspelt place',
    ['"speed": { "working": "rpm" }', '»"speed": { "workings": "rpm" }'],
    '$.steps[4].speed — Expected where the value comes from, such as {"input": "barDiameter"}, {"working": "turnSpeed"} or {"is": 2, "unit": "mm"}; found {"workings":"rpm"}. Did you mean "working"?',
  ),
  row(
    'a constant without a unit',
    ['"min": { "is": 17, "unit": "mm" }', '»"min": { "is": 17 }'],
    '$.steps[1].reading.min.unit — "unit" is missing here. Add it: text in double quotes.',
  ),
  row(
    'a flow without steps',
    [['"steps": [\n', '»"steps": [],\n  »"step": [\n']],
    '$.steps — Expected at least 1 entries, found 0.',
    '$.step — The key "step" is not known here. Did you mean "steps"?',
  ),
];

/** Flows whose names do not meet. */
export const badMeaning: readonly BadRow[] = [
  row(
    'an unknown machine kind',
    ['"machineKind": "lathe"', '»"machineKind": "lathes"'],
    '$.machineKind — There is no machine kind "lathes". Did you mean "lathe"? There are: lathe.',
  ),
  row(
    'a unit of another quantity',
    ['"unit": "mm", "min": 18', '»"unit": "rpm", "min": 18'],
    '$.inputs[1].unit — "rpm" is not a unit of length. Its units: mm, in, thou, um, cm, m, ft.',
  ),
  row(
    'an unknown quantity',
    ['"quantity": "length", "unit": "mm", "min"', '»"quantity": "lenght", "unit": "mm", "min"'],
    '$.inputs[1].quantity — There is no quantity "lenght". Did you mean "length"? There are: length, spindleSpeed, surfaceSpeed, wheelSpeed, feedPerRev, feedPerTooth, feedRate, time, angle, roughness, force, torque, power, stress, volumeRate, areaRate, area, temperature, expansion, mass, density, ratio, percent, pitchCount, count.',
  ),
  row(
    'a range turned round',
    ['"min": 18, "max": 40', '»"min": 40, "max": 18'],
    '$.inputs[1].min — The least value, 40, is above the most, 18. Exchange them.',
  ),
  row(
    'a default outside its range',
    ['"default": 25', '»"default": 45'],
    '$.inputs[1].default — The default 45 is outside 18 to 40 mm. Change it, or the range.',
  ),
  row(
    'a default that is no option',
    ['"default": "low-carbon-steel"', '»"default": "low-carbon-steal"'],
    '$.inputs[0].default — "low-carbon-steal" is not one of the options: low-carbon-steel, free-cutting-brass. Did you mean "low-carbon-steel"?',
  ),
  row(
    'an unknown rule',
    ['"rule": "card-speed"', '»"rule": "card-sped"'],
    '$.workings[1].rule — There is no trade rule "card-sped". Did you mean "card-speed"?',
  ),
  row(
    'an input the rule does not take',
    ['"given": { "diameter"', '"given": { »"speed": { "input": "bar" }, "diameter"'],
    '$.workings[1].given.speed — The rule "card-speed" takes no "speed". It takes: diameter, surfaceSpeed, speeds, chuckLimit, cardLimit, workLimit. Did you mean "surfaceSpeed"?',
  ),
  row(
    'an input the rule misses',
    ['"given": { "diameter": { "input": "bar" }, "surf', '»"given": { "surf'],
    '$.workings[1].given — The rule "card-speed" needs "diameter": diameter that is cut: of the work when turning, of the tool when drilling or milling.',
  ),
  row(
    'a wrong quantity into a rule',
    ['"surfaceSpeed": { "working": "surface" }', '»"surfaceSpeed": { "input": "bar" }'],
    '$.workings[1].given.surfaceSpeed — Expected surfaceSpeed (m/min), found length (mm).',
  ),
  row(
    'a number where a list is wanted',
    ['"speeds": { "card": "speeds" }', '»"speeds": { "card": "topSpeed" }'],
    '$.workings[1].given.speeds — Expected a list of spindleSpeed (rev/min), found spindleSpeed (rev/min).',
  ),
  row(
    'a constant in a strange unit',
    ['"diameter": { "input": "bar" }', '"diameter": { "is": 25, »"unit": "milimeter" }'],
    '$.workings[1].given.diameter.unit — "milimeter" is not a unit of length. Its units: mm, in, thou, um, cm, m, ft.',
  ),
  row(
    'an unknown input',
    ['"diameter": { "input": "bar" }', '»"diameter": { "input": "bart" }'],
    '$.workings[1].given.diameter — There is no input "bart". There are: metal, bar. Did you mean "bar"?',
  ),
  row(
    'an unknown field of the card',
    ['"speeds": { "card": "speeds" }', '»"speeds": { "card": "speed" }'],
    '$.workings[1].given.speeds — There is no field of a machine card "speed". There are: speeds, feeds, topSpeed, lowestSpeed, chuckLimit, motorPower, efficiency, crossReads, crossDivision, compoundDivision, quillPerTurn, leadScrewPitch, and 1 more. Did you mean "speeds"?',
  ),
  row(
    'a field named like the language',
    ['"speeds": { "card": "speeds" }', '»"speeds": { "card": "constructors" }'],
    '$.workings[1].given.speeds — There is no field of a machine card "constructors". There are: speeds, feeds, topSpeed, lowestSpeed, chuckLimit, motorPower, efficiency, crossReads, crossDivision, compoundDivision, quillPerTurn, leadScrewPitch, and 1 more.',
  ),
  row(
    'an unknown part of a working',
    ['"speed": { "working": "rpm" }', '»"speed": { "working": "rpm", "part": "ideel" }'],
    '$.steps[4].speed — The rule "card-speed" gives no part "ideel". It gives: ideal, surfaceSpeed. Did you mean "ideal"?',
  ),
  row(
    'a working that stands below',
    ['"material": { "input": "metal" }', '»"material": { "working": "rpm" }'],
    '$.workings[0].given.material — "rpm" stands below "surface". Workings are done from top to bottom: move "rpm" above.',
  ),
  row(
    'a working that uses itself',
    ['"material": { "input": "metal" }', '»"material": { "working": "surface" }'],
    '$.workings[0].given.material — The working "surface" cannot use itself. Take its value from somewhere else.',
  ),
  row(
    'two names alike',
    ['"reading": { "id": "now"', '"reading": { »"id": "bar"'],
    '$.steps[1].reading.id — The name "bar" stands twice among inputs, workings and readings. Give one of them another.',
  ),
  row(
    'two steps alike',
    ['"id": "mount"', '»"id": "gauge"'],
    '$.steps[2].id — The step "gauge" stands twice. Give one of them another id.',
  ),
  row(
    'two options alike',
    ['"id": "b"', '»"id": "a"'],
    '$.steps[3].options[1].id — The option "a" stands twice. Give one of them another id.',
  ),
  row(
    'a step called end',
    ['"id": "begin"', '»"id": "end"'],
    '$.steps[0].id — "end" means the end of the flow. Give the step another id.',
  ),
  row(
    'an unknown fact in a gate',
    ['"guard": "closed"', '»"gaurd": "closed"'],
    `$.gates.ready.gaurd — The lathe has no fact "gaurd". Did you mean "guard"? It has: ${facts}.`,
  ),
  row(
    'an unknown state',
    ['"guard": "closed"', '»"guard": "close"'],
    '$.gates.ready.guard — The fact "guard" is never "close". Did you mean "closed"? It is: closed, open.',
  ),
  row(
    'a remedy for no fact',
    ['"say": "Turn."', '"say": "Turn.", "remedies": { »"gard": "Close it." }'],
    `$.steps[4].remedies.gard — The lathe has no fact "gard". Did you mean "guard"? It has: ${facts}.`,
  ),
  row(
    'an unknown part of the machine',
    ['"say": "Turn."', '"say": "Turn.", »"part": "chukc"'],
    '$.steps[4].part — The lathe has no part "chukc". Did you mean "chuck"? It has: headstock, gear-levers, selector, emergency-stop, chuck, key-hole, guard, work, tool-post, tool, cross-slide, cross-dial, compound, carriage, carriage-wheel, feed-lever, half-nut-lever, lead-screw, tailstock, quill, tailstock-wheel, bed, ways.',
  ),
  row(
    'an unknown moment',
    ['"hands": true', '"hands": true, »"moment": "work-outt"'],
    '$.steps[2].moment — The lathe has no moment "work-outt". Did you mean "work-out"? It has: start, turning, cutting, hands, measuring, end, work-out, turn-round, tool-change, clear-swarf.',
  ),
  row(
    'an unknown gate',
    ['"gates": ["ready"]', '"gates": [»"redy"]'],
    '$.steps[4].gates[0] — This flow has no gate "redy". Did you mean "ready"? It has: still, ready.',
  ),
  row(
    'a target that is missing',
    ['"next": "turn"', '»"next": "tun"'],
    '$.steps[3].options[0].next — Step "which" goes to "tun", which this flow does not have. Did you mean "turn"? It has: begin, gauge, mount, which, turn.',
  ),
  row(
    'a reading used before it is taken',
    ['"say": "Say next."', '»"say": "The bar has {now}."'],
    '$.steps[0].say — Step "begin" uses the reading "now", but not every path to it goes through step "gauge", where it is taken.',
  ),
  row(
    'a reading that one path misses',
    [
      ['"say": "Say next."', '"say": "Say next.", "next": "mount"'],
      [
        '"speed": { "working": "rpm" }',
        '"speed": { "working": "rpm" }, »"depth": { "reading": "now" }',
      ],
    ],
    '$.steps[4].depth — Step "turn" uses the reading "now", but not every path to it goes through step "gauge", where it is taken.',
  ),
  row(
    'an unknown reading',
    [
      '"speed": { "working": "rpm" }',
      '"speed": { "working": "rpm" }, »"depth": { "reading": "know" }',
    ],
    '$.steps[4].depth — There is no reading "know". There are: now. Did you mean "now"?',
  ),
  row(
    'a length for a speed',
    ['"speed": { "working": "rpm" }', '»"speed": { "input": "bar" }'],
    '$.steps[4].speed — Expected spindleSpeed (rev/min), found length (mm).',
  ),
  row(
    'a formula in a sentence',
    ['"say": "Turn."', '»"say": "Turn at {1000 * v}."'],
    '$.steps[4].say — "1000 * v" in braces is no name of a value. Write {name} or {name.part}; formulas are trade rules, not text.',
  ),
  row(
    'a brace that is never closed',
    ['"say": "Turn."', '»"say": "Turn at {rpm."'],
    '$.steps[4].say — "{" in braces is no name of a value. Write {name} or {name.part}; formulas are trade rules, not text.',
  ),
  row(
    'an unknown value in a sentence',
    ['"say": "Grip {bar}."', '»"say": "Grip {bra}."'],
    '$.steps[2].say — There is no value "bra" to put into this sentence. Did you mean "bar"? There are: metal, bar, surface, rpm, now.',
  ),
  row(
    'limits of a reading turned round',
    ['"min": { "is": 17, "unit": "mm" }', '»"min": { "is": 2, "unit": "in" }'],
    '$.steps[1].reading.min — The least value, 2 in, is above the most, 41 mm. Exchange them.',
  ),
  row(
    'a step that needs what it changes',
    ['"hands": true', '"hands": true, "needs": { »"work": "clamped" }'],
    '$.steps[2].needs.work — Step "mount" changes "work" itself, so "needs" cannot ask for it. Take it out there, or ask for it in a step before.',
  ),
  row(
    'a step with hands in that needs the guard',
    [
      '"say": "Measure the bar.", "gates": ["still"]',
      '"say": "Measure the bar.", "gates": [»"ready"]',
    ],
    '$.steps[1].gates[0] — Hands are in at step "gauge", so the gate "ready" cannot ask for "guard": nobody can vouch for it while hands are near. Take it out there.',
  ),
  row(
    'two gates that want different things',
    [
      ['"still": {', '"going": { "spindle": "running" },\n    "still": {'],
      ['"gates": ["ready"]', '"gates": ["ready", »"going"]'],
    ],
    '$.steps[4].gates[1] — Step "turn" can never open: the gate "ready" wants "spindle" to be "stopped", the gate "going" wants it "running". Take one of them out.',
  ),
  row(
    'a need against a gate',
    ['"gates": ["ready"]', '"gates": ["ready"], "needs": { »"guard": "open" }'],
    '$.steps[4].needs.guard — Step "turn" can never open: the gate "ready" wants "guard" to be "closed", "needs" wants it "open". Take one of them out.',
  ),
  row(
    'two options with one word',
    ['"word": "that way"', '»"word": "this way"'],
    '$.steps[3].options[1].word — "this way" is already said by the option "a". Choose other words for the option "b", so that one answer means one thing.',
  ),
  row(
    'an option that is a command',
    ['"word": "that way"', '»"word": "stop"'],
    '$.steps[3].options[1].word — "stop" is a command everywhere. Choose other words for the option "b".',
  ),
  row(
    'an option that is a bare yes',
    ['"word": "that way"', '»"word": "yes"'],
    '$.steps[3].options[1].word — "yes" is a command everywhere. Choose other words for the option "b".',
  ),
  row(
    'an option that answers a fact',
    ['"word": "that way"', '"word": "that way", "also": [»"guard open"]'],
    '$.steps[3].options[1].also[0] — "guard open" is already said by "guard" for "open". Choose other words for the option "b", so that one answer means one thing.',
  ),
  row(
    'an option that calls a fault walk',
    ['"word": "that way"', '»"word": "will not start"'],
    '$.steps[3].options[1].word — "will not start" is already said by the walk "will-not-start". Choose other words for the option "b", so that one answer means one thing.',
  ),
  row(
    'a feature the piece does not have',
    ['"say": "Turn."', '"say": "Turn.", "makes": [»"shank"]'],
    '$.steps[4].makes[0] — The piece has no feature "shank". It has: none.',
  ),
  row(
    'a fault walk that is not there',
    ['"say": "Turn."', '"say": "Turn.", "troubles": [»"chater"]'],
    '$.steps[4].troubles[0] — The lathe has no walk "chater". Did you mean "chatter"? It has: chatter, poor-finish, taper, size-off, drill-wanders, tool-rubs, parting-grabs.',
  ),
  row(
    'a fault walk that is at every start anyway',
    ['"say": "Turn."', '"say": "Turn.", "troubles": [»"will-not-start"]'],
    '$.steps[4].troubles[0] — The walk "will-not-start" is at every start already. Take it out.',
  ),
  row(
    'a check question with two right answers',
    [
      '"say": "Say next."',
      '"say": "Say next.", "question": { "ask": "Why?", »"options": [{ "word": "for this", "right": true, "because": "So." }, { "word": "for that", "right": true, "because": "So." }] }',
    ],
    '$.steps[0].question.options — A question has one right answer; this one has 2. Mark one.',
  ),
  row(
    'a check question that is answered by a command',
    [
      '"say": "Say next."',
      '"say": "Say next.", "question": { "ask": "Why?", "options": [{ "word": "for this", "right": true, "because": "So." }, { »"word": "stop", "right": false, "because": "So." }] }',
    ],
    '$.steps[0].question.options[1].word — "stop" is a command everywhere. Choose other words for the option "stop".',
  ),
  row(
    'several faults at once, in the order of the text',
    [
      ['"default": 25', '»"default": 45'],
      ['"rule": "card-speed"', '»"rule": "card-sped"'],
      ['"guard": "closed"', '»"guard": "shut"'],
      ['"next": "turn"', '»"next": "tun"'],
      ['"say": "Turn."', '»"say": "Turn {it}."'],
    ],
    '$.inputs[1].default — The default 45 is outside 18 to 40 mm. Change it, or the range.',
    '$.workings[1].rule — There is no trade rule "card-sped". Did you mean "card-speed"?',
    '$.gates.ready.guard — The fact "guard" is never "shut". It is: closed, open.',
    '$.steps[3].options[0].next — Step "which" goes to "tun", which this flow does not have. Did you mean "turn"? It has: begin, gauge, mount, which, turn.',
    '$.steps[4].say — There is no value "it" to put into this sentence. There are: metal, bar, surface, rpm, now, speed, feed, depth, length.',
  ),
];
