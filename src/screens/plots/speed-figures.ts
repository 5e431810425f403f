/** What a speed plot shows, asked of the trade's own rules: nothing is worked out here. */
import type { RuleValues } from '../../trade/index.ts';
import { answerRule, findRule } from '../../trade/index.ts';
import type { Stretch } from './scale.ts';

/** One stretch of diameters (mm) on which the same speed (rev/min) is set; null where none is safe. */
export interface SpeedStep {
  readonly from: number;
  readonly to: number;
  readonly speed: number | null;
}

export interface SpeedQuestion {
  /** m/min */
  readonly surfaceSpeed: number;
  /** rev/min on the machine's card */
  readonly speeds: readonly number[];
  readonly chuckLimit?: number | undefined;
  readonly cardLimit?: number | undefined;
  readonly workLimit?: number | undefined;
}

/** Ideal speed in rev/min at a diameter in mm; undefined when the rule refuses. */
export function idealSpeed(surfaceSpeed: number, diameter: number): number | undefined {
  return ask('spindle-speed', { surfaceSpeed, diameter });
}

/** Speed to set in rev/min at a diameter in mm; undefined when no speed of the card is safe. */
export function speedToSet(question: SpeedQuestion, diameter: number): number | undefined {
  const { surfaceSpeed, speeds, chuckLimit, cardLimit, workLimit } = question;
  return ask('card-speed', { surfaceSpeed, diameter, speeds, chuckLimit, cardLimit, workLimit });
}

/** The stairs of speeds to set, from the smallest diameter to the largest. */
export function speedSteps(question: SpeedQuestion, [from, to]: Stretch): readonly SpeedStep[] {
  const edges = question.speeds.flatMap(
    // n = 1000 v ÷ (π D) turned round is D = 1000 v ÷ (π n): the same rule tells where a speed begins.
    (speed) => idealSpeed(question.surfaceSpeed, speed) ?? [],
  );
  const inside = edges.filter((edge) => edge > from && edge < to);
  const places = [from, ...inside.sort((a, b) => a - b), to];
  const steps = places.slice(1).map((end, index) => {
    const start = places[index] ?? from;
    return { from: start, to: end, speed: speedToSet(question, (start + end) / 2) ?? null };
  });
  return merged(steps);
}

function merged(steps: readonly SpeedStep[]): readonly SpeedStep[] {
  const out: SpeedStep[] = [];
  for (const step of steps) {
    const last = out.at(-1);
    if (last && last.speed === step.speed) out[out.length - 1] = { ...last, to: step.to };
    else out.push(step);
  }
  return out;
}

function ask(name: string, values: RuleValues): number | undefined {
  const rule = findRule(name);
  const answer = rule && answerRule(rule, values);
  return answer?.ok ? answer.value : undefined;
}
