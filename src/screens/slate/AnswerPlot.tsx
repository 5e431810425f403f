/** A picture of the answer, for the rules that have one. */

import type { RuleAnswer, RuleValue } from '../../trade/index.ts';
import { PassPlot } from '../plots/PassPlot.tsx';
import { SpeedPlot } from '../plots/SpeedPlot.tsx';
import { ToleranceBar } from '../plots/ToleranceBar.tsx';

interface AnswerPlotProps {
  readonly rule: string;
  readonly values: Readonly<Record<string, RuleValue>>;
  readonly answer: Extract<RuleAnswer, { ok: true }>;
}

export function AnswerPlot({ rule, values, answer }: AnswerPlotProps) {
  if (rule === 'card-speed') return <Speeds values={values} />;
  if (rule === 'pass-plan') return <Passes values={values} answer={answer} />;
  if (rule === 'judge-reading') return <Reading values={values} answer={answer} />;
  return null;
}

function Speeds({ values }: Pick<AnswerPlotProps, 'values'>) {
  const { diameter, surfaceSpeed, speeds, chuckLimit, cardLimit } = values;
  if (typeof diameter !== 'number' || typeof surfaceSpeed !== 'number' || !Array.isArray(speeds)) {
    return null;
  }
  return (
    <SpeedPlot
      title="Speeds of the card over the diameter"
      surfaceSpeed={surfaceSpeed}
      speeds={speeds}
      diameter={diameter}
      diameters={[Math.max(diameter / 5, 1), diameter * 3]}
      chuckLimit={numberIn(chuckLimit)}
      cardLimit={numberIn(cardLimit)}
    />
  );
}

function Passes({ values, answer }: Pick<AnswerPlotProps, 'values' | 'answer'>) {
  const { stockDiameter, finishDiameter } = values;
  const roughing = answer.parts?.roughingDiameters?.value;
  const finishing = answer.parts?.finishingDepth?.value;
  if (typeof stockDiameter !== 'number' || typeof finishDiameter !== 'number') return null;
  const rough = Array.isArray(roughing) ? roughing : [];
  const last = typeof finishing === 'number' && finishing > 0;
  return (
    <PassPlot
      title="Passes"
      from={stockDiameter}
      after={last ? [...rough, finishDiameter] : rough}
      finishing={last}
      current={0}
    />
  );
}

function Reading({ values, answer }: Pick<AnswerPlotProps, 'values' | 'answer'>) {
  const { reading, lower, upper, side } = values;
  if (typeof reading !== 'number' || typeof lower !== 'number' || typeof upper !== 'number') {
    return null;
  }
  const verdict = (['within', 'rework', 'lost'] as const).find((one) => one === answer.word);
  return (
    <ToleranceBar
      title="The reading against its limits"
      {...{ reading, lower, upper, verdict }}
      side={side === 'inside' ? 'inside' : 'outside'}
      decimals={3}
    />
  );
}

function numberIn(value: RuleValue | undefined): number | undefined {
  return typeof value === 'number' ? value : undefined;
}
