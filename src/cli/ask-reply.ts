/** What the ask command prints for its words: a line out, or a fault. */

import {
  answerRule,
  describeAnswer,
  describeRule,
  explainAnswer,
  findRule,
  nearestRule,
  readAsked,
  rules,
} from '../trade/index.ts';

/** `out` beside a fault is the fault as JSON, where JSON was asked for. */
export type Reply =
  | { readonly out: string; readonly fault?: undefined }
  | { readonly fault: string; readonly out?: string };

const OPTIONS = ['--list', '--explain', '--json', '--help'];

function unknownRule(name: string): Reply {
  const meant = nearestRule(name);
  const hint = meant === undefined ? '' : ` Did you mean "${meant}"?`;
  return { fault: `There is no rule "${name}"; --list shows all.${hint}` };
}

function listed(): Reply {
  return { out: JSON.stringify(rules.map(describeRule), null, 1) };
}

/** With --json a fault comes as JSON too, beside its sentence. */
export function replyTo(words: readonly string[]): Reply {
  const reply = plainReply(words);
  if (reply.fault === undefined || !words.includes('--json')) return reply;
  return { ...reply, out: JSON.stringify({ fault: reply.fault }) };
}

/** Words are a rule's name, name=value pairs, and options anywhere between them. */
function plainReply(words: readonly string[]): Reply {
  const options = words.filter((word) => word.startsWith('--'));
  const stranger = options.find((option) => !OPTIONS.includes(option));
  if (stranger !== undefined) {
    return { fault: `"${stranger}" is not an option; there are ${OPTIONS.join(', ')}.` };
  }
  if (options.includes('--list')) return listed();
  const [name, ...pairs] = words.filter((word) => !word.startsWith('--'));
  if (name === undefined) return { fault: 'Name a rule, or ask with --list for all of them.' };
  const rule = findRule(name);
  if (rule === undefined) return unknownRule(name);
  const asked = readAsked(rule, pairs);
  if (!asked.ok) return asked;
  const answer = answerRule(rule, asked.value);
  if (!answer.ok) return answer;
  const explained = options.includes('--explain');
  if (explained && !options.includes('--json')) return { out: explainAnswer(rule, answer) };
  const { formula, source, cautions } = rule;
  const more = explained ? { formula, source, cautions, given: asked.value } : {};
  return { out: JSON.stringify({ ...more, ...describeAnswer(rule, answer) }) };
}
