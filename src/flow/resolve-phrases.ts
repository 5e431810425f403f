/** Checks that one word means one thing: what is said must never answer two questions. */

import type { Language } from '../texts/index.ts';
import { commandWords } from './command-words.ts';
import type { Path } from './fault.ts';
import type { MachineKind } from './kind-shape.ts';
import type { Complain } from './resolve-values.ts';

interface Claim {
  readonly phrase: string;
  /** Who says it: 'the fact "guard"'. */
  readonly owner: string;
  readonly path: Path;
}

/** Words of facts and walks; short forms may be shared by facts, but never with a whole word. */
export function checkKindPhrases(kind: MachineKind, language: Language, complain: Complain): void {
  const commands = commandWords(language);
  const whole = kind.facts.flatMap((fact, at) =>
    fact.states.map(({ word }, index) => ({
      phrase: word,
      owner: `"${fact.id}" for "${fact.states[index]?.id}"`,
      path: ['facts', at, 'states', index, 'word'],
    })),
  );
  const walks = kind.walks.flatMap((walk, at) =>
    phrasesOf(walk, `the walk "${walk.id}"`, ['walks', at]),
  );
  const said = checkClaims([...whole, ...walks], new Map(), commands, complain);
  const short = kind.facts.flatMap((fact, at) =>
    fact.states.flatMap(({ id, also }, index) =>
      also.map((phrase, place) => ({
        phrase,
        owner: `"${fact.id}" for "${id}"`,
        path: ['facts', at, 'states', index, 'also', place],
      })),
    ),
  );
  for (const claim of short) checkClaims([claim], new Map(said), commands, complain);
}

interface Answer {
  readonly id: string;
  readonly word: string;
  readonly also: readonly string[];
}

/** Words that answer one choice or question, against each other, the commands and the machine's own words. */
export function checkAnswerPhrases(
  options: readonly Answer[],
  { kind, language }: { readonly kind: MachineKind; readonly language: Language },
  path: Path,
  complain: Complain,
): void {
  const machine = new Map<string, string>();
  for (const fact of kind.facts) {
    for (const { id, word, also } of fact.states) {
      for (const phrase of [word, ...also]) machine.set(phrase, `"${fact.id}" for "${id}"`);
    }
  }
  for (const walk of kind.walks) {
    for (const phrase of [walk.word, ...walk.also]) machine.set(phrase, `the walk "${walk.id}"`);
  }
  const claims = options.flatMap((option, index) =>
    phrasesOf(option, `the option "${option.id}"`, [...path, index]),
  );
  checkClaims(claims, machine, commandWords(language), complain);
}

function phrasesOf(
  { word, also }: { readonly word: string; readonly also: readonly string[] },
  owner: string,
  path: Path,
): readonly Claim[] {
  return [
    { phrase: word, owner, path: [...path, 'word'] },
    ...also.map((phrase, index) => ({ phrase, owner, path: [...path, 'also', index] })),
  ];
}

/** Complains of each phrase that somebody else has; gives back who says what. */
function checkClaims(
  claims: readonly Claim[],
  said: Map<string, string>,
  commands: ReadonlySet<string>,
  complain: Complain,
): ReadonlyMap<string, string> {
  for (const { phrase, owner, path } of claims) {
    const other = said.get(phrase);
    if (commands.has(phrase)) {
      complain(path, `"${phrase}" is a command everywhere. Choose other words for ${owner}.`);
    } else if (other !== undefined) {
      complain(
        path,
        `"${phrase}" is already said by ${other}. Choose other words for ${owner}, so that one answer means one thing.`,
      );
    }
    said.set(phrase, other ?? owner);
  }
  return said;
}
