/** The words by which a job is worked out again: its choices as people call them, and the speeds of its card. */

import { optionPhrases } from '../texts/index.ts';
import { findRule, type RuleInput } from '../trade/index.ts';
import { type Adjustment, feedWorking, speedWorking } from './adjust.ts';
import { commandPhrases } from './command-words.ts';
import type { Job } from './compile.ts';
import type { FlowInput } from './flow-shape.ts';
import { type FlowSnapshot, positionOf } from './position.ts';
import { speedSpoken } from './speed-told.ts';
import { offeredHere } from './walk-view.ts';

export interface AdjustItem {
  /** "adjust:tool:carbide", "running:460". */
  readonly id: string;
  readonly phrases: readonly string[];
  readonly adjust: Adjustment;
}

/** All that may be said here to change the numbers; words that `taken` has already are left out. */
export function adjustItems(
  job: Job,
  snapshot: FlowSnapshot,
  taken: Iterable<string>,
): readonly AdjustItem[] {
  if (positionOf(snapshot).phase === 'end') return [];
  const items = [...job.flow.file.inputs.flatMap((input) => choiceItems(job, input))];
  const all = [...offerItems(job, snapshot), ...items, ...speedItems(job, snapshot)];
  const shared = sharedPhrases(all, taken);
  return all.flatMap((item) => {
    const phrases = item.phrases.filter((phrase) => !shared.has(phrase));
    return phrases.length === 0 ? [] : [{ ...item, phrases }];
  });
}

type ChoiceInput = Extract<FlowInput, { options: string[] }>;

function choiceItems(job: Job, input: FlowInput): readonly AdjustItem[] {
  if (!('options' in input)) return [];
  return input.options.map((value) => ({
    id: `adjust:${input.id}:${value}`,
    phrases: phrasesOf(job, input, value),
    adjust: { type: 'adjust', input: input.id, value },
  }));
}

/** "brass" for "free-cutting-brass"; "no coolant" where the choice is a yes or a no. */
function phrasesOf(job: Job, input: ChoiceInput, option: string): readonly string[] {
  const { language } = job.flow;
  if (option === 'yes' || option === 'no') {
    const label = input.label.toLowerCase();
    const id = option === 'yes' ? 'withLabel' : 'withoutLabel';
    return commandPhrases(language, id).map((phrase) => phrase.replace('{label}', label));
  }
  const translated = optionPhrases(language, option);
  if (translated.length > 0) return translated;
  const said = rulesFedBy(job, input.id).flatMap((one) =>
    one.kind === 'choice' ? (one.said?.[option] ?? []) : [],
  );
  const names = said.map((name) => name.replaceAll('-', ' '));
  const plain = option.replaceAll('-', ' ');
  const own = job.card.materials?.find(({ name }) => name === option);
  if (own) return ownPhrases(own.title, plain);
  if (!/^[a-z ]{4,}$/.test(plain)) return [...new Set(names)];
  // One plain word is what people say: "carbide". A compound name comes after what they call it.
  return [...new Set(plain === option ? [plain, ...names] : [...names, plain])];
}

/** A shop's own material is called by its title, where that can be said, and by its name. */
function ownPhrases(title: string, plain: string): readonly string[] {
  const said = title.toLowerCase().replaceAll('-', ' ');
  return [...new Set([said, plain].filter((phrase) => /^[a-z ]{3,}$/.test(phrase)))];
}

/** The rule inputs that a choice of the flow is handed to. */
function rulesFedBy(job: Job, input: string): readonly RuleInput[] {
  return job.flow.file.workings.flatMap(({ rule, given }) =>
    Object.entries(given).flatMap(([name, ref]) => {
      if (!('input' in ref) || ref.input !== input) return [];
      return findRule(rule)?.inputs.filter((one) => one.name === name) ?? [];
    }),
  );
}

function speedItems(job: Job, snapshot: FlowSnapshot): readonly AdjustItem[] {
  const { speeds } = job.card.values;
  if (speedWorking(job, snapshot) === undefined || !Array.isArray(speeds)) return [];
  const { language } = job.flow;
  const heads = commandPhrases(language, 'running');
  return speeds.map((speed: number) => {
    const words = speedSpoken(job, speed, true).replaceAll('-', ' ');
    return {
      id: `running:${speed}`,
      phrases: heads.map((head) => `${head} ${words}`),
      adjust: { type: 'running', speed },
    };
  });
}

/** What a fault walk offers: worked with from now on; a speed is still to be set at the gate. */
function offerItems(job: Job, snapshot: FlowSnapshot): readonly AdjustItem[] {
  const offered = offeredHere(job, snapshot);
  const working = offered?.of === 'feed' ? feedWorking : speedWorking;
  if (!offered || working(job, snapshot) === undefined) return [];
  const { of, value, word } = offered;
  const phrases = commandPhrases(job.flow.language, word);
  const adjust: Adjustment =
    of === 'feed'
      ? { type: 'feeding', feed: value }
      : { type: 'running', speed: value, toSet: true };
  return [{ id: `offer:${value}`, phrases, adjust }];
}

/** What is said in two ways at once would be a guess: none of them counts. */
function sharedPhrases(items: readonly AdjustItem[], taken: Iterable<string>): ReadonlySet<string> {
  const seen = new Set<string>();
  const shared = new Set<string>(taken);
  for (const phrase of items.flatMap((item) => item.phrases)) {
    (seen.has(phrase) ? shared : seen).add(phrase);
  }
  return shared;
}
