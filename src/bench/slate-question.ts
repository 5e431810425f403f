/** Free words as a question to one rule of the trade: "speed for thirty millimetres brass". Pure. */

import type { Card } from '../flow/index.ts';
import { findRule, type Rule, type RuleValue, withShopMaterials } from '../trade/index.ts';
import {
  hasInput,
  pickChoices,
  pickClass,
  pickNumber,
  pickThread,
  plainWords,
} from './slate-words.ts';

export type SlateQuestion =
  | {
      readonly ok: true;
      readonly rule: Rule;
      readonly values: Readonly<Record<string, RuleValue>>;
    }
  /** What is missing or not understood, and how to say it. */
  | { readonly ok: false; readonly fault: string };

/** The machine whose limits and dials an answer stands on; none is needed. */
export type SlateCard = Pick<Card, 'units' | 'values' | 'materials'>;

type Values = Readonly<Record<string, RuleValue | undefined>>;
type Read = Values | string;

interface Kind {
  readonly begins: RegExp;
  readonly rule: string;
  /** `words` is plain, `raw` as it came; both without what began the question. */
  readonly read: (words: string, raw: string, rule: Rule, unit: string) => Read;
}

const sizeMaterial = (example: string) =>
  ((words, _raw, rule, unit) => {
    const { values, rest } = pickChoices(rule, words, ['material', 'tool', 'operation', 'coolant']);
    const diameter = pickNumber(rest, unit);
    if (diameter === undefined) return `Say a diameter and a material: ${example}.`;
    if (values.material === undefined) return `Say the material too: ${example}.`;
    return { ...values, diameter };
  }) satisfies Kind['read'];

const ofThread = ((words) => {
  const thread = pickThread(words);
  return thread === undefined ? 'Say a thread: M ten, M ten by one, quarter twenty.' : { thread };
}) satisfies Kind['read'];

/** In the order they are tried: the narrower beginning first. */
const kinds: readonly Kind[] = [
  {
    begins: /^(?:drill(?:ing)? speed|speed for drilling)\b/,
    rule: 'drill-speed',
    read: sizeMaterial('drill speed for eight millimetres brass'),
  },
  {
    begins: /^(?:drill(?:ing)? feed|feed for drilling)\b/,
    rule: 'drill-feed',
    read: sizeMaterial('drill feed for eight millimetres brass'),
  },
  { begins: /^tap(?:ping)? drill\b/, rule: 'tap-drill', read: tapping },
  { begins: /^(?:size )?over wires\b/, rule: 'size-over-wires', read: ofThread },
  { begins: /^(?:best )?wires?\b/, rule: 'best-wire', read: ofThread },
  { begins: /^thread limits\b/, rule: 'thread-limits', read: ofThread },
  { begins: /^thread(?: sizes?)?\b/, rule: 'thread-sizes', read: ofThread },
  { begins: /^limits\b/, rule: 'limits-of-size', read: limits },
  {
    begins: /^(?:feed for (?:roughness|ra|r a|finish)|feed for a roughness)\b/,
    rule: 'feed-for-roughness',
    read: roughness,
  },
  { begins: /^dial\b/, rule: 'dial-setting', read: dial },
  { begins: /^morse(?: taper)?\b/, rule: 'morse-taper', read: morse },
  { begins: /^taper (?:of )?(?:one|1) in\b/, rule: 'taper-angle', read: oneIn },
  { begins: /^(?:taper|compound angle)\b/, rule: 'compound-angle', read: taper },
  { begins: /^pass(?:es| plan)\b/, rule: 'pass-plan', read: passes },
  {
    begins: /^(?:spindle )?speed\b/,
    rule: 'speed-for-material',
    read: sizeMaterial('speed for thirty millimetres brass'),
  },
];

/** "Brass thirty high-speed steel": a material and a size, in any order, ask for the speed. */
const bareSpeed: Kind = {
  begins: /\bspeed\b(?! steel)/,
  rule: 'speed-for-material',
  read: sizeMaterial('speed for thirty millimetres brass'),
};

const runUp = /^(?:what is|what s|whats|what|the|a|find|give me|tell me|please) /;
const joining = /^(?:for|of|with|is|from|a|an|the|to) /;

/** Reads a question; numbers without a unit are in that of the machine. */
export function slateQuestion(text: string, card?: SlateCard): SlateQuestion {
  const words = strip(plainWords(text), runUp);
  const kind = kinds.find(({ begins }) => begins.test(words)) ?? bareSpeed;
  const rule = ruleFor(kind.rule, card);
  if (!rule) return { ok: false, fault: unknown };
  const after = strip(words.replace(kind.begins, '').trim(), joining);
  const unit = card?.units === 'inch' ? 'in' : 'mm';
  const read = kind.read(after, text.trim(), rule, unit);
  if (typeof read === 'string') return { ok: false, fault: kind === bareSpeed ? unknown : read };
  return { ok: true, rule, values: { ...cardValues(rule, card), ...given(read) } };
}

/** The rule, knowing the shop's own materials where the card brings them. */
function ruleFor(name: string, card: SlateCard | undefined): Rule | undefined {
  const rule = findRule(name);
  const { materials = [] } = card ?? {};
  return rule && materials.length > 0 ? withShopMaterials([rule], materials)[0] : rule;
}

const unknown =
  'Say what to work out: speed, drill speed, drill feed, tapping drill, limits, feed for roughness, taper, wires, thread, dial or passes.';

function strip(words: string, start: RegExp): string {
  const next = words.replace(start, '');
  return next === words ? words : strip(next, start);
}

function given(values: Values): Readonly<Record<string, RuleValue>> {
  return Object.fromEntries(
    Object.entries(values).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
}

/** The machine's own speeds, limits and dial, where the rule asks for them. */
function cardValues(rule: Rule, card: SlateCard | undefined): Readonly<Record<string, RuleValue>> {
  const { topSpeed, crossReads, crossDivision, ...values } = card?.values ?? {};
  const named: Values = {
    ...values,
    cardLimit: topSpeed,
    dialReads: crossReads,
    graduation: crossDivision,
  };
  return given(
    Object.fromEntries(
      Object.entries(named).filter(([name]) => hasInput(rule, name) !== undefined),
    ),
  );
}

function tapping(words: string): Read {
  const [, thread = words, percent] =
    /^(.+?)(?: (?:at )?(\S+(?: \S+)*?) ?(?:percent|per cent|%))?$/.exec(words) ?? [];
  const share = percent === undefined ? undefined : pickNumber(percent, '');
  const name = pickThread(thread);
  return name === undefined
    ? 'Say a thread: tapping drill for M ten.'
    : { thread: name, percent: share };
}

/** A class said aloud has no capitals, and H7 is not h7: the person says which. */
function limits(words: string, raw: string, _rule: Rule, unit: string): Read {
  const example = 'limits for twenty-five h seven shaft';
  const hole = /\b(?:hole|bore)\b/.test(words);
  const shaft = /\b(?:shaft|pin)\b/.test(words);
  const bare = words.replace(/\b(?:hole|bore|shaft|pin)\b/g, ' ').trim();
  const found = pickClass(bare);
  const size = pickNumber(bare.replace(/([a-z]{1,2}) ?([a-z]+|\d{1,2})$/, ''), unit);
  if (!found || size === undefined) return `Say a size and a class: ${example}.`;
  const written = new RegExp(`${found.letter.toUpperCase()} ?${found.grade}`).test(raw);
  if (!hole && !shaft && !written) return 'Say hole or shaft after the class.';
  const letter = hole || (written && !shaft) ? found.letter.toUpperCase() : found.letter;
  return { size, class: `${letter}${found.grade}` };
}

function roughness(words: string, _raw: string, _rule: Rule, unit: string): Read {
  const [, wanted = '', nose = ''] =
    /^(.+?)(?: with)?(?: a)? nose(?: radius)?(?: of)? (.+)$/.exec(words) ?? [];
  const value = pickNumber(wanted.replace(/ (?:microns?|micrometres?|um)$/, ''), 'um');
  const noseRadius = pickNumber(nose, unit);
  return value === undefined || noseRadius === undefined
    ? 'Say both: feed for roughness one point six, nose zero point four.'
    : { roughness: value, noseRadius };
}

function dial(words: string, _raw: string, _rule: Rule, unit: string): Read {
  const reads = /\bradius\b/.test(words)
    ? 'radius'
    : /\bdiameter\b/.test(words)
      ? 'diameter'
      : undefined;
  const change = pickNumber(words.replace(/\b(?:radius|diameter|dial)\b/g, ' '), unit);
  return change === undefined
    ? 'Say how much the diameter is to change: dial for zero point five.'
    : { change, dialReads: reads };
}

function morse(words: string): Read {
  const number = pickNumber(words.replace(/^(?:number|taper) /, ''), '');
  return number === undefined ? 'Say its number: Morse taper three.' : { number: String(number) };
}

function oneIn(words: string): Read {
  const value = pickNumber(words, '');
  return value === undefined ? 'Say the taper: taper of one in twenty.' : { oneIn: value };
}

function taper(words: string, _raw: string, _rule: Rule, unit: string): Read {
  const [, a = '', b = '', c = ''] = /^(.+?) to (.+?) (?:over|in|on) (.+)$/.exec(words) ?? [];
  const [large, small, length] = [a, b, c].map((part) =>
    pickNumber(part.replace(/ long$/, ''), unit),
  );
  return large === undefined || small === undefined || length === undefined
    ? 'Say both diameters and the length: taper from thirty to twenty-five over fifty.'
    : { large, small, length };
}

function passes(words: string, _raw: string, _rule: Rule, unit: string): Read {
  const [, a = '', b = '', c = ''] =
    /^(.+?) to (.+?) (?:in |with )?cuts of (.+)$/.exec(words) ?? [];
  const [stockDiameter, finishDiameter, deepestCut] = [a, b, c].map((part) =>
    pickNumber(part, unit),
  );
  return stockDiameter === undefined || finishDiameter === undefined || deepestCut === undefined
    ? 'Say it whole: passes from sixty to forty-two in cuts of two.'
    : { stockDiameter, finishDiameter, deepestCut };
}
