/** Free words as a question to one rule of the trade: "speed for thirty millimetres brass". Pure. */

import { type Card, cardForRule } from '../flow/index.ts';
import { asksTexts, englishLanguage, type Language, type Say, sayIn } from '../texts/index.ts';
import { findRule, type Rule, type RuleValue, withShopMaterials } from '../trade/index.ts';
import { type PhrasesOf, type Phrasing, phrasingIn } from './slate-phrasing.ts';
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
export type SlateCard = Pick<Card, 'units' | 'values' | 'materials'> &
  Partial<Pick<Card, 'speedQuantity'>>;

type Values = Readonly<Record<string, RuleValue | undefined>>;
type Read = Values | string;

/** The words of a question without its beginning, and all that is needed to read them. */
interface Asked {
  /** Plain words. */
  readonly words: string;
  /** As they came, whole. */
  readonly raw: string;
  readonly rule: Rule;
  /** Of a bare number. */
  readonly unit: string;
  readonly phrasing: Phrasing;
  readonly say: Say<typeof asksTexts>;
}

interface Kind {
  /** The phrases with which it begins. */
  readonly begins: PhrasesOf;
  readonly rule: string;
  readonly read: (asked: Asked) => Read;
}

type Example = 'speedExample' | 'drillSpeedExample' | 'drillFeedExample';

const sizeMaterial = (key: Example) => (asked: Asked) => {
  const { words, rule, unit, phrasing, say } = asked;
  const names = ['material', 'tool', 'operation', 'coolant'];
  const { values, rest } = pickChoices(rule, words, names, phrasing);
  const diameter = pickNumber(rest, unit, phrasing);
  const example = say(key);
  if (diameter === undefined) return say('sayDiameter', { example });
  if (values.material === undefined) return say('sayMaterial', { example });
  return { ...values, diameter };
};

const ofThread = ({ words, phrasing, say }: Asked): Read => {
  const thread = pickThread(words, phrasing);
  return thread === undefined ? say('sayThread') : { thread };
};

/** In the order they are tried: the narrower beginning first. */
const kinds: readonly Kind[] = [
  { begins: 'drillSpeed', rule: 'drill-speed', read: sizeMaterial('drillSpeedExample') },
  { begins: 'drillFeed', rule: 'drill-feed', read: sizeMaterial('drillFeedExample') },
  { begins: 'tapDrill', rule: 'tap-drill', read: tapping },
  { begins: 'overWires', rule: 'size-over-wires', read: ofThread },
  { begins: 'wires', rule: 'best-wire', read: ofThread },
  { begins: 'threadLimits', rule: 'thread-limits', read: ofThread },
  { begins: 'thread', rule: 'thread-sizes', read: ofThread },
  { begins: 'limits', rule: 'limits-of-size', read: limits },
  { begins: 'roughness', rule: 'feed-for-roughness', read: roughness },
  { begins: 'dial', rule: 'dial-setting', read: dial },
  { begins: 'morse', rule: 'morse-taper', read: morse },
  { begins: 'oneIn', rule: 'taper-angle', read: oneIn },
  { begins: 'taper', rule: 'compound-angle', read: taper },
  { begins: 'passes', rule: 'pass-plan', read: passes },
  { begins: 'speed', rule: 'speed-for-material', read: sizeMaterial('speedExample') },
];

/** Reads a question; numbers without a unit are in that of the machine. */
export function slateQuestion(
  text: string,
  card?: SlateCard,
  language: Language = englishLanguage,
): SlateQuestion {
  const phrasing = phrasingIn(language);
  const say = sayIn(language, asksTexts);
  const words = stripped('runUp', plainWords(text, language), phrasing);
  const kind = kinds.find(({ begins }) => phrasing.begins(begins, words));
  // "Brass thirty high-speed steel": a material and a size, in any order, ask for the speed.
  const after = kind ? phrasing.after(kind.begins, words) : phrasing.withoutSpeed(words);
  const rule = ruleFor(kind?.rule ?? 'speed-for-material', card, language);
  if (!rule) return { ok: false, fault: say('unknown') };
  const read = (kind?.read ?? sizeMaterial('speedExample'))({
    words: stripped('joining', after, phrasing),
    raw: text.trim(),
    rule,
    unit: card?.units === 'inch' ? 'in' : 'mm',
    phrasing,
    say,
  });
  if (typeof read === 'string') return { ok: false, fault: kind ? read : say('unknown') };
  return { ok: true, rule, values: { ...cardValues(rule, card), ...given(read) } };
}

/** The rule, knowing the shop's own materials where the card brings them. */
function ruleFor(name: string, card: SlateCard | undefined, language: Language): Rule | undefined {
  const rule = findRule(name, language);
  const { materials = [] } = card ?? {};
  return rule && materials.length > 0 ? withShopMaterials([rule], materials)[0] : rule;
}

function stripped(key: 'runUp' | 'joining', words: string, phrasing: Phrasing): string {
  const next = phrasing.after(key, words);
  return next === words ? words : stripped(key, next, phrasing);
}

function given(values: Values): Readonly<Record<string, RuleValue>> {
  return Object.fromEntries(
    Object.entries(values).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
}

/** The machine's own speeds, limits and dial, where the rule asks for them. */
function cardValues(rule: Rule, card: SlateCard | undefined): Readonly<Record<string, RuleValue>> {
  if (!card) return {};
  const { speedQuantity = 'spindleSpeed', values: all } = card;
  const { crossReads, crossDivision, ...values } = cardForRule(rule, {
    speedQuantity,
    values: all,
  });
  const named: Values = {
    ...values,
    dialReads: crossReads,
    graduation: crossDivision,
  };
  return given(
    Object.fromEntries(
      Object.entries(named).filter(([name]) => hasInput(rule, name) !== undefined),
    ),
  );
}

function tapping({ words, phrasing, say }: Asked): Read {
  const bare = phrasing.before('percent', words);
  const [thread, share] = bare === words ? [words] : shareIn(bare, phrasing);
  const name = pickThread(thread, phrasing);
  if (name === undefined) return say('sayTapThread');
  return {
    thread: name,
    percent: share === undefined ? undefined : pickNumber(share, '', phrasing),
  };
}

/** The thread and the share that was said after it: "M8 at sixty five", "M8 sixty". */
function shareIn(words: string, phrasing: Phrasing): readonly [string, string?] {
  const parts = phrasing.split('at', words);
  if (parts) return parts;
  const [, thread = words, share] = /^(\S+(?: \S+)?) (.+)$/.exec(words) ?? [];
  return share === undefined ? [thread] : [thread, share];
}

/** A class said aloud has no capitals, and H7 is not h7: the person says which. */
function limits({ words, raw, unit, phrasing, say }: Asked): Read {
  const hole = phrasing.has('hole', words);
  const shaft = phrasing.has('shaft', words);
  const bare = phrasing.without(['hole', 'shaft'], words);
  const found = pickClass(bare, phrasing);
  const size = pickNumber(bare.replace(/(\p{L}{1,2}) ?(\p{L}+|\d{1,2})$/u, ''), unit, phrasing);
  if (!found || size === undefined) return say('sayClass');
  const written = new RegExp(`${found.letter.toUpperCase()} ?${found.grade}`).test(raw);
  if (!hole && !shaft && !written) return say('sayHole');
  const letter = hole || (written && !shaft) ? found.letter.toUpperCase() : found.letter;
  return { size, class: `${letter}${found.grade}` };
}

function roughness({ words, unit, phrasing, say }: Asked): Read {
  const [wanted = '', nose = ''] = phrasing.split('nose', words) ?? [];
  const value = pickNumber(phrasing.before('microns', wanted), 'um', phrasing);
  const noseRadius = pickNumber(nose, unit, phrasing);
  return value === undefined || noseRadius === undefined
    ? say('sayRoughness')
    : { roughness: value, noseRadius };
}

function dial({ words, unit, phrasing, say }: Asked): Read {
  const reads = (['radius', 'diameter'] as const).find((key) => phrasing.has(key, words));
  const bare = phrasing.without(['radius', 'diameter', 'dial'], words);
  const change = pickNumber(bare, unit, phrasing);
  return change === undefined ? say('sayDial') : { change, dialReads: reads };
}

function morse({ words, phrasing, say }: Asked): Read {
  const number = pickNumber(phrasing.after('number', words), '', phrasing);
  return number === undefined ? say('sayMorse') : { number: String(number) };
}

function oneIn({ words, phrasing, say }: Asked): Read {
  const value = pickNumber(words, '', phrasing);
  return value === undefined ? say('sayOneIn') : { oneIn: value };
}

function taper({ words, unit, phrasing, say }: Asked): Read {
  const [a = '', rest = ''] = phrasing.split('to', words) ?? [];
  const [b = '', c = ''] = phrasing.split('over', rest) ?? [];
  const [large, small, length] = [a, b, phrasing.before('long', c)].map((part) =>
    pickNumber(part, unit, phrasing),
  );
  return large === undefined || small === undefined || length === undefined
    ? say('sayTaper')
    : { large, small, length };
}

function passes({ words, unit, phrasing, say }: Asked): Read {
  const [a = '', rest = ''] = phrasing.split('to', words) ?? [];
  const [b = '', c = ''] = phrasing.split('cutsOf', rest) ?? [];
  const [stockDiameter, finishDiameter, deepestCut] = [a, b, c].map((part) =>
    pickNumber(part, unit, phrasing),
  );
  return stockDiameter === undefined || finishDiameter === undefined || deepestCut === undefined
    ? say('sayPasses')
    : { stockDiameter, finishDiameter, deepestCut };
}
