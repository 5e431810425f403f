/** Machine kinds and machine cards that must be refused: the sentences were written by hand. */

import { describe, expect, test } from 'vitest';
import { type Fault, faultText, readCard, readKind } from '../../src/flow/index.ts';
import { type Edit, edited, unmarked } from './marked.ts';
import { textOf } from './shipped.ts';

type Row = readonly [what: string, edits: readonly Edit[], faults: readonly string[]];

const lathe = textOf('kinds/lathe.json');
const card = textOf('machines/metric-lathe.json');

/** What came back and what was expected, as lines "file:line:column path — sentence". */
function compared(
  whole: string,
  [, edits, faults]: Row,
  read: (text: string) => { readonly ok: boolean; readonly faults?: readonly Fault[] },
) {
  const { text, places } = unmarked(edited(whole, edits));
  expect(places).toHaveLength(faults.length);
  return {
    came: (read(text).faults ?? []).map(faultText),
    wanted: faults.map((fault, index) => `it.json:${places[index]} ${fault}`),
  };
}

const one = (from: string, to: string): readonly Edit[] => [[from, to]];

const allFacts =
  'eyes, clothing, emergency-stop, spindle, work, chuck-key, turned-by-hand, tool-lock, tool-place, tailstock, speed, guard, hands';

const kindRows: readonly Row[] = [
  [
    'a flow in its place',
    one('"followrest": "machine-kind"', '»"followrest": "flow"'),
    ['$.followrest — This file is a flow; a machine-kind is wanted here. Choose another file.'],
  ],
  [
    'a role for no fact',
    one('"fact": "spindle",\n      "on"', '»"fact": "spindel",\n      "on"'),
    [
      `$.roles.power.fact — The lathe has no fact "spindel". Did you mean "spindle"? It has: ${allFacts}.`,
    ],
  ],
  [
    'advice of no rule',
    one('"rule": "tailstock-correction"', '»"rule": "tailstock-corection"'),
    [
      '$.walks[3].items[1].advice.rule — There is no trade rule "tailstock-corection". Did you mean "tailstock-correction"?',
    ],
  ],
  [
    'advice on a number its rule does not take',
    one('"input": "difference"', '»"input": "gap"'),
    [
      '$.walks[3].items[1].advice.input — The rule "tailstock-correction" takes no number "gap". It takes: difference, measuredLength, workLength.',
    ],
  ],
  [
    'advice that does not tell its answer',
    one('"say": "Move the tailstock {answer}:', '»"say": "Move the tailstock:'),
    ['$.walks[3].items[1].advice.say — The sentence does not tell {answer}.'],
  ],
  [
    'a role for no state',
    one('"on": "running"', '»"on": "runing"'),
    [
      '$.roles.power.on — The fact "spindle" is never "runing". Did you mean "running"? It is: stopped, running.',
    ],
  ],
  [
    'two facts alike',
    [
      ['"id": "hands",\n      "label"', '»"id": "guard",\n      "label"'],
      ['"fact": "hands",\n            "not"', '»"fact": "hands",\n            "not"'],
      ['"fact": "hands",\n                "is"', '»"fact": "hands",\n                "is"'],
    ],
    [
      '$.facts[12].id — The fact "guard" stands twice. Give one of them another id.',
      `$.hazards[7].never.all[1].fact — The lathe has no fact "hands". It has: ${allFacts.replace('hands', 'guard')}.`,
      `$.hazards[22].never.all[1].any[1].fact — The lathe has no fact "hands". It has: ${allFacts.replace('hands', 'guard')}.`,
    ],
  ],
  [
    'two states alike',
    one(
      '"id": "out",\n          "word": "work out"',
      '»"id": "loose",\n          "word": "work out"',
    ),
    ['$.facts[4].states[2].id — The state "loose" stands twice. Give one of them another id.'],
  ],
  [
    'a state that is called unknown',
    one('"id": "near"', '»"id": "unknown"'),
    [
      '$.facts[12].states[1].id — "unknown" is what a fact is before anybody has answered. Give the state another id.',
    ],
  ],
  [
    'two facts with one word',
    one('"word": "hands near"', '»"word": "guard open"'),
    [
      '$.facts[12].states[1].word — "guard open" is already said by "guard" for "open". Choose other words for "hands" for "near", so that one answer means one thing.',
    ],
  ],
  [
    'a short word that is the whole word of another fact',
    one('"also": ["clamped"]', '"also": [»"guard closed"]'),
    [
      '$.facts[4].states[0].also[0] — "guard closed" is already said by "guard" for "closed". Choose other words for "work" for "clamped", so that one answer means one thing.',
    ],
  ],
  [
    'a fact that is answered by a command',
    one('"word": "it catches"', '»"word": "back"'),
    [
      '$.facts[6].states[2].word — "back" is a command everywhere. Choose other words for "turned-by-hand" for "catches".',
    ],
  ],
  [
    'a fault walk called by a command',
    one('"word": "will not start"', '»"word": "why"'),
    [
      '$.walks[0].word — "why" is a command everywhere. Choose other words for the walk "will-not-start".',
    ],
  ],
  [
    'a fault walk called like a state of a step',
    one('"id": "will-not-start"', '»"id": "hold"'),
    ['$.walks[0].id — "hold" is the name of a state inside every step. Give it another id.'],
  ],
  [
    'a fault walk called like a moment',
    one('"id": "will-not-start"', '»"id": "hands"'),
    [
      '$.walks[0].id — "hands" is a moment as well, and hazards could not tell them apart. Give it another id.',
    ],
  ],
  [
    'a fault walk that begins with no state',
    one('"id": "chatter",', '"id": "chatter",\n"begins": { »"tool-lock": "lose" },'),
    [
      '$.walks[1].begins["tool-lock"] — The fact "tool-lock" is never "lose". Did you mean "loose"? It is: locked, loose.',
    ],
  ],
  [
    'an item called like the first of every walk',
    one('"id": "selector-off"', '»"id": "settle"'),
    [
      '$.walks[0].items[0].id — "settle" is the name of a state inside every step. Give it another id.',
    ],
  ],
  [
    'an item that asks for no fact',
    one('"needs": {\n            "guard": "closed"', '"needs": {\n            »"gard": "closed"'),
    [
      `$.walks[0].items[1].needs.gard — The lathe has no fact "gard". Did you mean "guard"? It has: ${allFacts}.`,
    ],
  ],
  [
    'a hazard of no moment',
    [['"moment": "end"', '»"moment": "ending"']],
    [
      '$.hazards[19].never.all[0].moment — The lathe has no moment "ending". Did you mean "end"? It has: start, turning, cutting, hands, measuring, end, work-out, turn-round, tool-change, clear-swarf, will-not-start, chatter, and 6 more.',
    ],
  ],
  [
    'a hazard as a sentence',
    one(
      '"never": {\n        "all": [\n          {\n            "moment": "end"',
      '»"never": "end", »"nevr": {\n        "all": [\n          {\n            "moment": "end"',
    ),
    [
      '$.hazards[19].never — Expected a condition such as {"fact": "guard", "not": "closed"} or {"all": [ … ]}; found "end".',
      '$.hazards[19].nevr — The key "nevr" is not known here. Did you mean "never"?',
    ],
  ],
  [
    'a claim without its form',
    one('"id": "LATHE-LEAVE"', '»"id": "leave"'),
    ['$.hazards[19].id — Expected a claim id such as "LATHE-GUARD"; found "leave".'],
  ],
  [
    'a fact about no part',
    one('"part": "key-hole"', '»"part": "keyhole"'),
    [
      '$.facts[5].part — The lathe has no part "keyhole". Did you mean "key-hole"? It has: headstock, gear-levers, selector, emergency-stop, chuck, key-hole, guard, work, tool-post, tool, cross-slide, cross-dial, compound, carriage, carriage-wheel, feed-lever, half-nut-lever, lead-screw, tailstock, quill, tailstock-wheel, bed, ways.',
    ],
  ],
  [
    'a missing prompt',
    one('"prompts": {\n    "setSpeed": "Set the spindle to {speed}.",', '»"prompts": {'),
    ['$.prompts.setSpeed — "setSpeed" is missing here. Add it: text in double quotes.'],
  ],
];

const cardRows: readonly Row[] = [
  [
    'a speed without a unit',
    one('"70 rpm"', '»"70"'),
    ['$.speeds[0] — "70" has no unit. Write it as on the machine, such as "0.02 mm" or "450 rpm".'],
  ],
  [
    'a speed in millimetres',
    one('"115 rpm"', '»"115 mm"'),
    ['$.speeds[1] — "115 mm" has the unit "mm"; allowed here: rev/min, rev/s.'],
  ],
  [
    'a speed that is a number',
    one('"190 rpm"', '»190'),
    ['$.speeds[2] — Expected text in double quotes, found 190.'],
  ],
  [
    'a chuck without a number',
    one('"chuckLimit": "1600 rpm"', '»"chuckLimit": "none rpm"'),
    [
      '$.chuckLimit — "none rpm" does not start with a number; write a number and a unit out of rev/min, rev/s.',
    ],
  ],
  [
    'a division of nothing',
    one('"crossDivision": "0.02 mm"', '»"crossDivision": "0 mm"'),
    ['$.crossDivision — It must be above zero, found "0 mm".'],
  ],
  [
    'a share above one',
    one('"efficiency": 0.75', '»"efficiency": 75'),
    ['$.efficiency — Expected at most 1, found 75.'],
  ],
  [
    'a dial that reads something else',
    one('"crossReads": "diameter"', '»"crossReads": "diametre"'),
    ['$.crossReads — Expected "diameter" or "radius", found "diametre". Did you mean "diameter"?'],
  ],
  [
    'no units of the shop',
    [
      ['{\n  "$schema"', '»{\n  "$schema"'],
      ['"units": "metric",', ''],
    ],
    ['$.units — "units" is missing here. Add it: "metric" or "inch".'],
  ],
  [
    'a field of another name',
    one('"swing": "330 mm"', '»"swings": "330 mm"'),
    ['$.swings — The key "swings" is not known here. Did you mean "swing"?'],
  ],
  [
    'several at once',
    [
      ['"0.05 mm/rev"', '»"0.05 rpm"'],
      ['"quillPerTurn"', '»"quillPerTurn"'],
      ['"5 mm",', '"-5 mm",'],
    ],
    [
      '$.feeds[0] — "0.05 rpm" has the unit "rpm"; allowed here: mm/rev, in/rev, thou/rev.',
      '$.quillPerTurn — It must be above zero, found "-5 mm".',
    ],
  ],
];

describe('a machine kind', () => {
  test.each(kindRows)('with %s is refused', (...row) => {
    const { came, wanted } = compared(lathe, row, (text) => readKind('it.json', text));
    expect(came).toEqual(wanted);
  });
});

describe('a machine card', () => {
  test.each(cardRows)('with %s is refused', (...row) => {
    const { came, wanted } = compared(card, row, (text) => readCard('it.json', text));
    expect(came).toEqual(wanted);
  });
});
