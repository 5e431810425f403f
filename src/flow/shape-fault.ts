/** Turns what the schema library reports into sentences an instructor can act on. */

import type { z } from 'zod';
import { sequence, type Worded, worded } from '../texts/index.ts';
import type { Fault } from './fault.ts';
import { inside, keysAt } from './known-keys.ts';
import { listed, suggested } from './nearest.ts';
import { blockKinds } from './piece-shape.ts';
import { inOrder, type Source } from './source.ts';

type Issue = z.core.$ZodIssue;
type UnionIssue = Extract<Issue, { code: 'invalid_union' }>;
type At = readonly (string | number)[];

/** All faults of one failed parse, in the order of the text. */
export function shapeFaults(source: Source, shape: z.ZodType, error: z.ZodError): readonly Fault[] {
  const teller = new Teller(source, shape);
  return inOrder(error.issues.flatMap((issue) => teller.tell(issue, [])));
}

class Teller {
  constructor(
    private readonly source: Source,
    private readonly shape: z.ZodType,
  ) {}

  tell(issue: Issue, above: At): readonly Fault[] {
    const path = [...above, ...(issue.path as (string | number)[])];
    const fault = (message: Worded, at: At = path) => this.source.fault(at, message);
    switch (issue.code) {
      case 'invalid_union':
        return this.union(issue, path);
      case 'unrecognized_keys':
        return issue.keys.map((key) => fault(this.unknownKey(key, path), [...path, key]));
      case 'invalid_key':
        return issue.issues.map((inner) => fault(sentence(inner, path.at(-1), path)));
      default:
        return [fault(sentence(issue, this.valueAt(path), path))];
    }
  }

  /** Of several shapes, the one that came nearest tells what is wrong. */
  private union(issue: UnionIssue, path: At): readonly Fault[] {
    const value = this.valueAt(path);
    const keys = keysAt(this.shape, this.source.value, path);
    const own = typeof value === 'object' && value !== null ? Object.keys(value) : [];
    const [nearest] = [...issue.errors].sort((a, b) => distance(a) - distance(b));
    if (nearest && own.some((key) => keys.includes(key))) {
      return nearest.flatMap((inner) => this.tell(inner, path));
    }
    return [this.source.fault(path, noShape(issue, path, value, own, keys))];
  }

  private unknownKey(key: string, path: At): Worded {
    const known = keysAt(this.shape, this.source.value, path);
    const near = suggested(key, known);
    const known30 = listed(known, 30);
    return near === ''
      ? worded`The key "${key}" is not known here. Take it out. Known here: ${known30}.`
      : worded`The key "${key}" is not known here.${near}`;
  }

  private valueAt(path: At): unknown {
    return path.reduce<unknown>(inside, this.source.value);
  }
}

function noShape(
  issue: UnionIssue,
  path: At,
  value: unknown,
  own: readonly string[],
  keys: readonly string[],
): Worded {
  if (issue.discriminator === 'kind')
    return path.includes('features') ? unknownFeature(value) : unknownStepKind(value);
  const near = own.length === 1 ? suggested(own[0] ?? '', keys) : '';
  const example = keys.includes('moment')
    ? 'a condition such as {"fact": "guard", "not": "closed"} or {"all": [ … ]}'
    : keys.includes('card')
      ? 'where the value comes from, such as {"input": "barDiameter"}, {"working": "turnSpeed"} or {"is": 2, "unit": "mm"}'
      : worded`${'an object in { }'} with keys out of: ${listed(keys, 30)}`;
  return worded`Expected ${example}; found ${shown(value)}.${near}`;
}

function unknownStepKind(value: unknown): Worded {
  const kinds = ['tell', 'check', 'do', 'measure', 'choose', 'cut', 'inspect', 'passes'];
  const [kind, near] = kindIn(value, kinds);
  return worded`Expected a step kind (${kinds.join(', ')}), found ${shown(kind)}.${near}`;
}

function unknownFeature(value: unknown): Worded {
  const [kind, near] = kindIn(value, blockKinds);
  return worded`Expected a feature of a block (${blockKinds.join(', ')}), found ${shown(kind)}.${near}`;
}

/** The kind that stands there, and the known one it may have been meant for. */
function kindIn(value: unknown, kinds: readonly string[]): readonly [unknown, Worded] {
  const kind =
    typeof value === 'object' && value !== null ? (value as { kind?: unknown }).kind : value;
  return [kind, typeof kind === 'string' ? suggested(kind, kinds) : ''];
}

/** Missing keys weigh more than wrong values: the branch whose keys are there is the one meant. */
function distance(issues: readonly Issue[]): number {
  return issues.reduce((sum, issue) => {
    if (issue.code === 'unrecognized_keys') return sum + 3 * issue.keys.length;
    return sum + (issue.code === 'invalid_type' ? 2 : 1);
  }, 0);
}

function sentence(issue: Issue, value: unknown, path: At): Worded {
  switch (issue.code) {
    case 'invalid_type':
      return value === undefined
        ? missing(path.at(-1), named(issue.expected))
        : worded`Expected ${named(issue.expected)}, found ${shown(value)}.`;
    case 'invalid_value':
      return value === undefined
        ? missing(path.at(-1), options(issue.values))
        : worded`Expected ${options(issue.values)}, found ${shown(value)}.${nearOption(value, issue.values)}`;
    case 'too_big':
      return issue.inclusive === false
        ? worded`Expected less than ${String(issue.maximum)}${unitOf(issue.origin)}, found ${amount(value)}.`
        : worded`Expected at most ${String(issue.maximum)}${unitOf(issue.origin)}, found ${amount(value)}.`;
    case 'too_small':
      return issue.inclusive === false
        ? worded`Expected more than ${String(issue.minimum)}${unitOf(issue.origin)}, found ${amount(value)}.`
        : worded`Expected at least ${String(issue.minimum)}${unitOf(issue.origin)}, found ${amount(value)}.`;
    case 'invalid_format':
    case 'custom':
      return worded`Expected ${issue.message}; found ${shown(value)}.`;
    default:
      return worded`${issue.message}; found ${shown(value)}.`;
  }
}

function missing(key: string | number | undefined, what: Worded): Worded {
  return worded`"${String(key)}" is missing here. Add it: ${what}.`;
}

function options(values: readonly unknown[]): Worded {
  return sequence(
    values.map((one) => JSON.stringify(one)),
    ' or ',
  );
}

function nearOption(value: unknown, values: readonly unknown[]): Worded {
  return typeof value === 'string' ? suggested(value, values.map(String)) : '';
}

/** The schema's words for kinds of value, as somebody knows them who writes JSON by hand. */
const kindNames: Readonly<Record<string, string>> = {
  string: 'text in double quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list in [ ]',
  object: 'an object in { }',
  record: 'an object in { }',
};

function named(kind: string): string {
  return kindNames[kind] ?? kind;
}

function unitOf(origin: string): string {
  if (origin === 'string') return ' characters';
  return origin === 'array' ? ' entries' : '';
}

function amount(value: unknown): string {
  if (typeof value === 'string' || Array.isArray(value)) return String(value.length);
  return shown(value);
}

function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
