/** Turns what the schema library reports into sentences an instructor can act on. */

import type { z } from 'zod';
import type { Fault } from './fault.ts';
import { inside, keysAt } from './known-keys.ts';
import { listed, suggestion } from './nearest.ts';
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
    const fault = (message: string, at: At = path) => this.source.fault(at, message);
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
    return [this.source.fault(path, noShape(issue, value, own, keys))];
  }

  private unknownKey(key: string, path: At): string {
    const known = keysAt(this.shape, this.source.value, path);
    const near = suggestion(key, known);
    return `The key "${key}" is not known here.${near || ` Take it out. Known here: ${listed(known, 30)}.`}`;
  }

  private valueAt(path: At): unknown {
    return path.reduce<unknown>(inside, this.source.value);
  }
}

function noShape(
  issue: UnionIssue,
  value: unknown,
  own: readonly string[],
  keys: readonly string[],
): string {
  if (issue.discriminator === 'kind') return unknownStepKind(value);
  const near = own.length === 1 ? suggestion(own[0] ?? '', keys) : '';
  const example = keys.includes('moment')
    ? 'a condition such as {"fact": "guard", "not": "closed"} or {"all": [ … ]}'
    : keys.includes('card')
      ? 'where the value comes from, such as {"input": "barDiameter"}, {"working": "turnSpeed"} or {"is": 2, "unit": "mm"}'
      : `an object in { } with keys out of: ${listed(keys, 30)}`;
  return `Expected ${example}; found ${shown(value)}.${near}`;
}

function unknownStepKind(value: unknown): string {
  const kinds = ['tell', 'check', 'do', 'measure', 'choose', 'cut', 'inspect', 'passes'];
  const kind =
    typeof value === 'object' && value !== null ? (value as { kind?: unknown }).kind : value;
  const near = typeof kind === 'string' ? suggestion(kind, kinds) : '';
  return `Expected a step kind (${kinds.join(', ')}), found ${shown(kind)}.${near}`;
}

/** Missing keys weigh more than wrong values: the branch whose keys are there is the one meant. */
function distance(issues: readonly Issue[]): number {
  return issues.reduce((sum, issue) => {
    if (issue.code === 'unrecognized_keys') return sum + 3 * issue.keys.length;
    return sum + (issue.code === 'invalid_type' ? 2 : 1);
  }, 0);
}

function sentence(issue: Issue, value: unknown, path: At): string {
  switch (issue.code) {
    case 'invalid_type':
      return value === undefined
        ? missing(path.at(-1), named(issue.expected))
        : `Expected ${named(issue.expected)}, found ${shown(value)}.`;
    case 'invalid_value':
      return value === undefined
        ? missing(path.at(-1), options(issue.values))
        : `Expected ${options(issue.values)}, found ${shown(value)}.${nearOption(value, issue.values)}`;
    case 'too_big':
      return `Expected ${issue.inclusive === false ? 'less than' : 'at most'} ${issue.maximum}${unitOf(issue.origin)}, found ${amount(value)}.`;
    case 'too_small':
      return `Expected ${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}${unitOf(issue.origin)}, found ${amount(value)}.`;
    case 'invalid_format':
    case 'custom':
      return `Expected ${issue.message}; found ${shown(value)}.`;
    default:
      return `${issue.message}; found ${shown(value)}.`;
  }
}

function missing(key: string | number | undefined, what: string): string {
  return `"${key}" is missing here. Add it: ${what}.`;
}

function options(values: readonly unknown[]): string {
  return values.map((one) => JSON.stringify(one)).join(' or ');
}

function nearOption(value: unknown, values: readonly unknown[]): string {
  return typeof value === 'string' ? suggestion(value, values.map(String)) : '';
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
