/** Turns what the schema library reports into sentences an instructor can act on. */

import { z } from 'zod';
import { cardShape } from './card-shape.ts';
import type { Fault } from './fault.ts';
import { flowShape } from './flow-shape.ts';
import { kindShape } from './kind-shape.ts';
import { suggestion } from './nearest.ts';
import type { Source } from './source.ts';

type Issue = z.core.$ZodIssue;

/** All faults of one failed parse, in the order of the text. */
export function shapeFaults(source: Source, error: z.ZodError): readonly Fault[] {
  return error.issues
    .flatMap((issue) => issueFaults(source, issue, []))
    .sort((a, b) => a.line - b.line || a.column - b.column);
}

function issueFaults(source: Source, issue: Issue, above: readonly (string | number)[]): Fault[] {
  const path = [...above, ...(issue.path as (string | number)[])];
  if (issue.code === 'invalid_union') return unionFaults(source, issue, path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => source.fault([...path, key], unknownKey(key)));
  }
  return [source.fault(path, sentence(issue, valueAt(source.value, path)))];
}

/** Of several shapes, the one that came nearest tells what is wrong. */
function unionFaults(
  source: Source,
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: (string | number)[],
): Fault[] {
  const value = valueAt(source.value, path);
  const [nearest] = [...issue.errors].sort((a, b) => distance(a) - distance(b));
  if (nearest === undefined || typeof value !== 'object' || value === null) {
    return [source.fault(path, noShape(issue, value))];
  }
  return nearest.flatMap((inner) => issueFaults(source, inner, path));
}

function noShape(issue: Extract<Issue, { code: 'invalid_union' }>, value: unknown): string {
  if (issue.discriminator === 'kind') return unknownStepKind(value);
  return `Expected an object such as {"input": "barDiameter"} or {"is": 2, "unit": "mm"}, found ${shown(value)}.`;
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

function unknownKey(key: string): string {
  const near = suggestion(key, knownKeys());
  return `The key "${key}" is not known here.${near || ' Take it out, or correct its name.'}`;
}

function sentence(issue: Issue, value: unknown): string {
  switch (issue.code) {
    case 'invalid_type':
      return value === undefined
        ? `Missing: expected ${article(issue.expected)}.`
        : `Expected ${article(issue.expected)}, found ${shown(value)}.`;
    case 'invalid_value':
      return `Expected ${issue.values.map((one) => JSON.stringify(one)).join(' or ')}, found ${shown(value)}.${nearOption(value, issue.values)}`;
    case 'too_big':
      return `Expected at most ${issue.maximum}${unitOf(issue.origin)}, found ${amount(value)}.`;
    case 'too_small':
      return `Expected at least ${issue.minimum}${unitOf(issue.origin)}, found ${amount(value)}.`;
    case 'invalid_format':
      return `Expected ${issue.message}, found ${shown(value)}.`;
    default:
      return `${issue.message}; found ${shown(value)}.`;
  }
}

function nearOption(value: unknown, options: readonly unknown[]): string {
  return typeof value === 'string' ? suggestion(value, options.map(String)) : '';
}

function article(what: string): string {
  const names: Record<string, string> = { int: 'a whole number', record: 'an object' };
  return names[what] ?? `${/^[aeiou]/.test(what) ? 'an' : 'a'} ${what}`;
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

function valueAt(root: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Record<string | number, unknown>)[key]
        : undefined,
    root,
  );
}

let collected: ReadonlySet<string> | undefined;

/** Every key that any file of ours may have, gathered once from the published JSON schema. */
function knownKeys(): ReadonlySet<string> {
  if (collected) return collected;
  const keys = new Set<string>();
  for (const shape of [flowShape, kindShape, cardShape]) {
    gather(z.toJSONSchema(shape, { io: 'input' }), keys);
  }
  collected = keys;
  return keys;
}

function gather(schema: unknown, keys: Set<string>): void {
  if (typeof schema !== 'object' || schema === null) return;
  const { properties } = schema as { properties?: Record<string, unknown> };
  for (const key of Object.keys(properties ?? {})) keys.add(key);
  for (const inner of Object.values(schema)) gather(inner, keys);
}
