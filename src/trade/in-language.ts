/** Puts an answer and a rule into a language. */

import { englishLanguage, type Language, type Worded, wordedIn } from '../texts/index.ts';
import type { Rule, RuleAnswer, RuleInput, Worked, WorkedPart, WorkingPart } from './rule.ts';

/** The answer with its sentences. A sentence of another language is made when it is read: the proof asks for numbers thousands of times. */
export function inLanguage(worked: Worked, language: Language): RuleAnswer {
  if (language.sentences === undefined) return inEnglish(worked);
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
    ...(word === undefined
      ? {}
      : { word: wordedIn(englishLanguage, word), wordShown: wordedIn(language, word) }),
    ...(source === undefined ? {} : { source: wordedIn(language, source) }),
    ...(parts === undefined ? {} : { parts: partsIn(parts, language) }),
  });
}

/** The short way: most texts of an answer are English already. */
function inEnglish(worked: Worked): RuleAnswer {
  const say = (said: Worded) => (typeof said === 'string' ? said : wordedIn(englishLanguage, said));
  if (!worked.ok) return { ok: false, fault: say(worked.fault) };
  const { value, working, ruledBy, word, source, parts } = worked;
  return {
    ok: true,
    value,
    working: say(working),
    ...(source === undefined ? {} : { source }),
    ...(ruledBy === undefined ? {} : { ruledBy: say(ruledBy) }),
    ...(word === undefined ? {} : { word: say(word) }),
    ...(parts === undefined
      ? {}
      : { parts: isPlain(parts) ? parts : partsIn(parts, englishLanguage) }),
  };
}

function isPlain(
  parts: Readonly<Record<string, WorkedPart>>,
): parts is Readonly<Record<string, WorkingPart>> {
  for (const name in parts) if (typeof parts[name]?.meaning !== 'string') return false;
  return true;
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
