/** What a roughness plot shows, asked of the trade's own rules. */
import { answerRule, findRule } from '../../trade/index.ts';

/** Ra in theory (µm) at a feed (mm/rev) with a nose radius (mm); undefined when the rule refuses. */
export function roughnessAt(feedPerRev: number, noseRadius: number): number | undefined {
  return ask('roughness-average', { feedPerRev, noseRadius });
}

/** The largest feed (mm/rev) that leaves a wanted Ra (µm) in theory; undefined when the rule refuses. */
export function feedFor(roughness: number, noseRadius: number): number | undefined {
  return ask('feed-for-roughness', { roughness, noseRadius });
}

function ask(name: string, values: Readonly<Record<string, number>>): number | undefined {
  const rule = findRule(name);
  const answer = rule && answerRule(rule, values);
  return answer?.ok ? answer.value : undefined;
}
