/** Reads the words behind `npm run prove --`. */

export const proveHelp = `npm run -s prove -- [FILE…] [--json] [--inputs] [--mutants] [--card ID] [--replay LINE]

Walks every situation that a flow can come to, and judges its claims. Without a FILE: all shipped flows.
  --json         one line of JSON a flow, also at a terminal; elsewhere it is so without asking
  --inputs       proves it for the numbers that may be put in: both ends of each and every choice, one by one and
                 together, and choices and speeds that change in a run (half a minute a card)
  --mutants      takes each condition, limit, effect, remedy and target of a flow out in turn, and then each hazard,
                 loss and question of its machine kind: each that matters must be found (a minute or two)
  --card ID      only with this machine card; without it, with every shipped card of the machine kind
  --replay LINE  plays what was said in one FILE, turn by turn, as a broken claim prints it

Exit 0: all proved. 1: one is not, or a mutant that matters was missed. 2: a file cannot be read.`;

export interface ProveWords {
  readonly files: readonly string[];
  readonly json: boolean;
  readonly inputs: boolean;
  readonly mutants: boolean;
  readonly card?: string;
  readonly replay?: string;
}

export type ProveWordsResult =
  | { readonly ok: true; readonly words: ProveWords }
  | { readonly ok: false; readonly fault: string };

const switches: ReadonlySet<string> = new Set(['--json', '--inputs', '--mutants']);

/** What is asked for, or the sentence that says which word is not known. */
export function readProveWords(given: readonly string[]): ProveWordsResult {
  const files: string[] = [];
  const values: Record<string, string> = {};
  const set = new Set<string>();
  for (let at = 0; at < given.length; at += 1) {
    const word = given[at] ?? '';
    if (switches.has(word)) set.add(word);
    else if (word === '--card' || word === '--replay') {
      const value = given[++at];
      if (value === undefined) return { ok: false, fault: `${word} needs a value behind it.` };
      values[word] = value;
    } else if (word.startsWith('--')) {
      return {
        ok: false,
        fault: `There is no "${word}". There are: --json, --inputs, --mutants, --card, --replay.`,
      };
    } else files.push(word);
  }
  const card = values['--card'];
  const replay = values['--replay'];
  if (replay !== undefined && set.has('--mutants')) {
    return {
      ok: false,
      fault: '--replay plays one line, and --mutants judges many flows: choose one.',
    };
  }
  if (set.has('--inputs') && (replay !== undefined || set.has('--mutants'))) {
    const other = replay === undefined ? '--mutants' : '--replay';
    return { ok: false, fault: `--inputs and ${other} are two things to do: choose one.` };
  }
  if (replay !== undefined && files.length !== 1) {
    return { ok: false, fault: '--replay plays one flow: name one FILE before it.' };
  }
  return {
    ok: true,
    words: {
      files,
      json: set.has('--json'),
      inputs: set.has('--inputs'),
      mutants: set.has('--mutants'),
      ...(card === undefined ? {} : { card }),
      ...(replay === undefined ? {} : { replay }),
    },
  };
}
