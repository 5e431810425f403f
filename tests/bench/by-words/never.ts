/** What must hold in every state that a run comes to, whatever was said. */

import type { RunState } from '../../../src/bench/index.ts';
import { viewOf } from '../../../src/flow/index.ts';

/** The broken rules, each by its claim; none for a state that is as it must be. */
export function brokenRules(state: RunState): readonly string[] {
  const { snapshot } = state;
  const { facts } = snapshot.context;
  const is = (tag: Parameters<typeof snapshot.hasTag>[0]) =>
    snapshot.status === 'active' && snapshot.hasTag(tag);
  const running = facts.spindle === 'running' && !is('held');
  const rules: readonly (readonly [string, boolean])[] = [
    ['[LATHE-GUARD] the spindle runs with the guard open', running && facts.guard !== 'closed'],
    ['[LATHE-KEY] the spindle runs with the key in', running && facts['chuck-key'] !== 'out'],
    ['[LATHE-WORK] the spindle runs with the work loose', running && facts.work !== 'clamped'],
    [
      '[LATHE-TOOL] the spindle runs with the tool loose',
      running && facts['tool-lock'] !== 'locked',
    ],
    [
      '[LATHE-HANDS-IN] hands are in with the spindle not stopped',
      is('hands') && facts.spindle !== 'stopped',
    ],
    [
      '[LATHE-MEASURE] measured with the spindle not stopped',
      is('measuring') && facts.spindle !== 'stopped',
    ],
  ];
  return [...rules.filter(([, broken]) => broken).map(([rule]) => rule), ...brokenWords(state)];
}

function brokenWords(state: RunState): readonly string[] {
  const { lead, ask } = viewOf(state.job, state.snapshot);
  const text = `${lead.shown} ${lead.spoken} ${ask.shown} ${ask.spoken}`;
  return [
    ...(text.trim() === '' ? ['nothing is said'] : []),
    ...(/[{}]|undefined|NaN/.test(text) ? [`a value is missing: ${text}`] : []),
  ];
}
