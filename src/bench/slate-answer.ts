/** A question in free words, answered by the trade: the answer to show, the line to say, and what stands behind it. */

import { formatOf, type Given, shownAs } from '../flow/index.ts';
import {
  asksTexts,
  englishLanguage,
  type Language,
  midSentence,
  optionText,
  sayIn,
} from '../texts/index.ts';
import {
  answerRule,
  baseUnitOf,
  type Quantity,
  type Rule,
  type RuleAnswer,
  type RuleValue,
} from '../trade/index.ts';
import { sayNumber, showNumber } from '../words/index.ts';
import { sentence } from './sentence.ts';
import { type SlateCard, slateQuestion } from './slate-question.ts';
import { behindLine } from './why-that.ts';

export interface SlateReply {
  readonly question: string;
  readonly rule: string;
  readonly title: string;
  /** "530 rpm". */
  readonly shown: string;
  /** "Five hundred and thirty. The surface speed rules." */
  readonly spoken: string;
  /** What went in: "diameter 30 mm", "material free cutting brass". */
  readonly given: readonly string[];
  readonly working: string;
  readonly formula: string;
  readonly ruledBy?: string;
  readonly source: string;
  /** What is said to "why that". */
  readonly why: string;
}

export type SlateResult =
  | { readonly ok: true; readonly reply: SlateReply }
  | { readonly ok: false; readonly fault: string };

export function slateAnswer(
  text: string,
  card?: SlateCard,
  language: Language = englishLanguage,
): SlateResult {
  const asked = slateQuestion(text, card, language);
  if (!asked.ok) return asked;
  const answer = answerRule(asked.rule, asked.values);
  if (!answer.ok) return answer;
  return { ok: true, reply: replyOf(text, asked.rule, asked.values, answer, { card, language }) };
}

type Good = Extract<RuleAnswer, { ok: true }>;

function replyOf(
  question: string,
  rule: Rule,
  values: Readonly<Record<string, RuleValue>>,
  answer: Good,
  { card, language }: { readonly card: SlateCard | undefined; readonly language: Language },
): SlateReply {
  const say = sayIn(language, asksTexts);
  const here = { units: card?.units ?? 'metric', language };
  const { shown, spoken } = told(rule, answer, here);
  const { ruledBy, working } = answer;
  const source = answer.source ?? rule.source;
  const given = givenTo(rule, values, here);
  const answered = sentence(spoken);
  return {
    question,
    rule: rule.name,
    title: rule.title,
    shown,
    spoken:
      ruledBy === undefined
        ? say('answer', { answer: answered })
        : say('answerRuled', { answer: answered, limit: sentence(ruledBy) }),
    given: given.map(({ label, text }) => say('given', { label, text })),
    working,
    formula: rule.formula,
    ...(ruledBy === undefined ? {} : { ruledBy }),
    source,
    why: behindLine(spoken, { given, working, source, ...(ruledBy ? { ruledBy } : {}) }, language),
  };
}

/** What the person said of it, under the rule's own names: not the machine's lists and limits. */
function givenTo(
  rule: Rule,
  values: Readonly<Record<string, RuleValue>>,
  here: Here,
): readonly Given[] {
  return rule.inputs.flatMap((input) => {
    const value = values[input.name];
    const plain = input.name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
    const label = input.label ? midSentence(here.language, input.label) : plain;
    if (typeof value === 'string') {
      const text = optionText(here.language, value);
      return [{ label, text, spoken: text }];
    }
    if (input.kind !== 'number' || typeof value !== 'number') return [];
    if (/limit$/.test(plain)) return [];
    const { shown, spoken } = dressed(value, input.quantity, here);
    return [{ label, text: shown, spoken }];
  });
}

/** Whose dials an answer is told for, and in which language. */
interface Here {
  readonly units: SlateCard['units'];
  readonly language: Language;
}

interface Told {
  readonly shown: string;
  readonly spoken: string;
}

/** Limits are told as two figures: half of a pair is worse than none. */
function told(rule: Rule, answer: Good, here: Here): Told {
  const say = sayIn(here.language, asksTexts);
  const lower = answer.parts?.lower?.value;
  const upper = answer.parts?.upper?.value;
  if (typeof lower === 'number' && typeof upper === 'number') {
    const [low, high] = [lower, upper].map((value) => dressed(value, rule.output.quantity, here));
    return {
      shown: say('range', { low: low?.shown ?? '', high: high?.shown ?? '' }),
      spoken: say('rangeSaid', { low: low?.spoken ?? '', high: high?.spoken ?? '' }),
    };
  }
  const size = dressed(answer.value, rule.output.quantity, here);
  const { word, wordShown = word } = answer;
  if (rule.name === 'pass-plan') {
    return {
      shown: say('passesOf', { n: size.shown }),
      spoken: say('passesOf', { n: size.spoken }),
    };
  }
  if (word === undefined || wordShown === undefined || /^[\d.]+$/.test(word)) return size;
  return {
    shown: say('withSize', { word: wordShown, size: size.shown }),
    spoken: say('withSizeSaid', {
      word: word.startsWith('#') ? say('drillNumber', { n: word.slice(1) }) : wordShown,
      size: size.spoken,
    }),
  };
}

/** Lengths to the micrometre or the tenth of a thou, since a gauge may ask for it; the rest as the bench has it. */
const finer: Partial<Record<Quantity, number>> = {
  length: 3,
  feedPerRev: 3,
  angle: 3,
  roughness: 2,
};

function dressed(value: number, quantity: Quantity, { units, language }: Here): Told {
  const unit = baseUnitOf(quantity);
  const decimals = finer[quantity];
  const format = formatOf(quantity, units, decimals === undefined ? {} : { unit, decimals });
  const one = shownAs(value, quantity, format);
  const trimmed = Number(one.value.toFixed(one.decimals));
  const places = (String(trimmed).split('.')[1] ?? '').length;
  return {
    shown: showNumber(one.value, one.unit, Math.min(one.decimals, places), language),
    spoken: sayNumber(one.value, one.unit, one.decimals, { language }),
  };
}
