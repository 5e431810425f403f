/** What must hold in every state that a run comes to, whatever was said. */

import type { RunState } from '../../../src/bench/index.ts';
import { viewOf } from '../../../src/flow/index.ts';

/** What must be so while the spindle runs: written here by hand for each machine kind, not read from its file. */
const whileRunning: Readonly<Record<string, readonly (readonly [string, string, string])[]>> = {
  lathe: [
    ['[LATHE-GUARD] the spindle runs with the guard open', 'guard', 'closed'],
    ['[LATHE-KEY] the spindle runs with the key in', 'chuck-key', 'out'],
    ['[LATHE-WORK] the spindle runs with the work loose', 'work', 'clamped'],
    ['[LATHE-TOOL] the spindle runs with the tool loose', 'tool-lock', 'locked'],
  ],
  'drill-press': [
    ['[DRILL-GUARD] the spindle runs with the guard open', 'guard', 'closed'],
    ['[DRILL-COVER] the spindle runs with the belt cover open', 'belt-cover', 'closed'],
    ['[DRILL-KEY] the spindle runs with the key in', 'chuck-key', 'out'],
    ['[DRILL-WORK] the spindle runs with the work held by hand or loose', 'work', 'clamped'],
    ['[DRILL-TIGHT] the spindle runs with the drill loose', 'drill-lock', 'tight'],
    ['[DRILL-TABLE] the spindle runs with the table loose', 'table', 'locked'],
  ],
};

/** The broken rules, each by its claim; none for a state that is as it must be. */
export function brokenRules(state: RunState): readonly string[] {
  const { snapshot } = state;
  const { facts } = snapshot.context;
  const is = (tag: Parameters<typeof snapshot.hasTag>[0]) =>
    snapshot.status === 'active' && snapshot.hasTag(tag);
  const running = facts.spindle === 'running' && !is('held');
  const must = whileRunning[state.job.flow.kind.id] ?? [];
  const rules: readonly (readonly [string, boolean])[] = [
    ...must.map(
      ([rule, fact, wanted]) =>
        [rule, running && facts[fact] !== wanted] as readonly [string, boolean],
    ),
    ['no never-rules are written here for this machine kind', must.length === 0],
    [
      '[DRILL-BELT] the belt is moved under power',
      is('belt-change') && facts['main-switch'] !== 'off',
    ],
    [
      '[HANDS-IN] hands are in with the spindle not stopped',
      is('hands') && facts.spindle !== 'stopped',
    ],
    [
      '[MEASURE] measured with the spindle not stopped',
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
