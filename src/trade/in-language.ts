/** Puts an answer and a rule into a language. */

import { englishLanguage, type Language, wordedIn } from '../texts/index.ts';
import type { Rule, RuleAnswer, RuleInput, Worked, WorkedPart, WorkingPart } from './rule.ts';

/**
 * The answer with its sentences. The long ones are made when they are read: whoever wants the number alone, as the
 * proof does thousands of times, does not pay for words.
 */
export function inLanguage(worked: Worked, language: Language): RuleAnswer {
  const said = worked.ok ? worked.working : worked.fault;
  if (!worked.ok) {
    return {
      ok: false,
      get fault() {
        return wordedIn(language, said);
      },
    };
  }
  const { value, ruledBy, word, source, parts } = worked;
  const answer = {
    ok: true,
    value,
    get working() {
      return wordedIn(language, said);
    },
  } as const;
  return Object.assign(answer, {
    ...(ruledBy === undefined ? {} : { ruledBy: wordedIn(language, ruledBy) }),
    ...(word === undefined ? {} : { word: wordedIn(englishLanguage, word) }),
    ...(word === undefined || language.sentences === undefined
      ? {}
      : { wordShown: wordedIn(language, word) }),
    ...(source === undefined ? {} : { source: wordedIn(language, source) }),
    ...(parts === undefined ? {} : { parts: partsIn(parts, language) }),
  });
}

function partsIn(
  parts: Readonly<Record<string, WorkedPart>>,
  language: Language,
): Readonly<Record<string, WorkingPart>> {
  return Object.fromEntries(
    Object.entries(parts).map(([name, { value, quantity, meaning }]) => [
      name,
      { value, quantity, meaning: wordedIn(language, meaning), ...labelIn(language, name) },
    ]),
  );
}

/** What a rule says of itself, and what it answers, in a language. */
export function ruleIn(rule: Rule, language: Language): Rule {
  if (language.sentences === undefined) return rule;
  const say = (text: string) => wordedIn(language, text);
  return {
    ...rule,
    language,
    title: say(rule.title),
    topic: say(rule.topic),
    inputs: rule.inputs.map((input) => inputIn(input, language)),
    output: { ...rule.output, meaning: say(rule.output.meaning) },
    formula: say(rule.formula),
    source: say(rule.source),
    cautions: rule.cautions.map(say),
  };
}

function inputIn(input: RuleInput, language: Language): RuleInput {
  return {
    ...input,
    meaning: wordedIn(language, input.meaning),
    ...labelIn(language, input.name),
  };
}

/** Names of inputs and parts have keys of their own: "bore" is a hole here and a word for a cut there. */
function labelIn({ sentences }: Language, name: string): { readonly label?: string } {
  const label = sentences?.[`name:${name}`];
  return label === undefined ? {} : { label };
}
