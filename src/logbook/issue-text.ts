/** What is wrong with a value that was to be a row, in words: the library that finds it knows English only. */

import type { z } from 'zod';
import type { SayKeeping } from './fault.ts';

/** Checks of our own, by the key of what is said of them. */
const ownChecks = ['photoEmpty', 'photoLarge'] as const;

/** For the shape: what is said where its check fails. */
export function saidOf(said: (typeof ownChecks)[number]) {
  return { params: { said } };
}

/** Stands behind the place of the value: "must be a number". */
export function issueText(issue: z.core.$ZodIssue, say: SayKeeping): string {
  switch (issue.code) {
    case 'invalid_type':
      return say('wrongKind', { kind: issue.expected });
    case 'too_small':
      return say('tooSmall', { least: String(issue.minimum) });
    case 'too_big':
      return say('tooLarge', { most: String(issue.maximum) });
    case 'invalid_value':
      return say('oneOf', { values: issue.values.map(String).join(' / ') });
    case 'unrecognized_keys':
      return say('unknownNames', { names: issue.keys.join(', ') });
    case 'custom':
      return say(ownChecks.find((one) => one === issue.params?.said) ?? 'notSo');
    default:
      return say('notSo');
  }
}
