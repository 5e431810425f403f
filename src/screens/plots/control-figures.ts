/** Means and ranges of subgroups with their limits, asked of the trade's rule for control charts. */
import { type Language, plotTexts, sayIn } from '../../texts/index.ts';
import { answerRule, findRule } from '../../trade/index.ts';

export interface Panel {
  readonly values: readonly number[];
  readonly centre: number;
  readonly lower: number;
  readonly upper: number;
}

export type ControlFigures =
  | { readonly ok: true; readonly means: Panel; readonly ranges: Panel; readonly word: string }
  | { readonly ok: false; readonly fault: string };

/** Panels of an X-bar and R chart; every subgroup must hold the same number of readings, 2 to 10. */
export function controlFigures(
  subgroups: readonly (readonly number[])[],
  language: Language,
): ControlFigures {
  const size = subgroups[0]?.length ?? 0;
  const uneven = subgroups.findIndex((group) => group.length !== size);
  if (uneven > 0) {
    const count = subgroups[uneven]?.length ?? 0;
    const told = { group: uneven + 1, count, first: size };
    return { ok: false, fault: sayIn(language, plotTexts)('uneven', told) };
  }
  const means = subgroups.map((group) => group.reduce((sum, one) => sum + one, 0) / size);
  const ranges = subgroups.map((group) => Math.max(...group) - Math.min(...group));
  return limited(means, ranges, size, language);
}

function limited(
  means: readonly number[],
  ranges: readonly number[],
  size: number,
  language: Language,
): ControlFigures {
  const rule = findRule('control-limits', language);
  const answer = rule && answerRule(rule, { means, ranges, size });
  if (!answer?.ok) return { ok: false, fault: answer?.fault ?? '' };
  const part = (name: string): number => {
    const value = answer.parts?.[name]?.value;
    return typeof value === 'number' ? value : Number.NaN;
  };
  return {
    ok: true,
    word: answer.word ?? '',
    means: { values: means, centre: answer.value, lower: part('lower'), upper: part('upper') },
    ranges: {
      values: ranges,
      centre: part('range'),
      lower: part('rangeLower'),
      upper: part('rangeUpper'),
    },
  };
}
