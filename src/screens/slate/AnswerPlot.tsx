/** A picture of the answer, for the rules that have one. */

import { groupsOf } from '../../bench/index.ts';
import { slateTexts } from '../../texts/index.ts';
import type { RuleAnswer, RuleValue } from '../../trade/index.ts';
import { ControlChart } from '../plots/ControlChart.tsx';
import { FinishPlot } from '../plots/FinishPlot.tsx';
import { PassPlot } from '../plots/PassPlot.tsx';
import { SpeedPlot } from '../plots/SpeedPlot.tsx';
import { ToleranceBar } from '../plots/ToleranceBar.tsx';
import { useSay } from '../use-say.ts';

interface AnswerPlotProps {
  readonly rule: string;
  readonly values: Readonly<Record<string, RuleValue>>;
  readonly answer: Extract<RuleAnswer, { ok: true }>;
}

export function AnswerPlot({ rule, values, answer }: AnswerPlotProps) {
  if (SPEEDS.has(rule)) return <Speeds values={values} answer={answer} />;
  if (FINISHES.has(rule)) return <Finish rule={rule} values={values} answer={answer} />;
  if (RUNS.has(rule)) return <Run values={values} />;
  if (rule === 'pass-plan') return <Passes values={values} answer={answer} />;
  if (rule === 'judge-reading') return <Reading values={values} answer={answer} />;
  return null;
}

const SPEEDS = new Set(['card-speed', 'speed-for-material', 'drill-speed', 'parting-speed']);
const FINISHES = new Set(['roughness-peak', 'roughness-average', 'feed-for-roughness']);
const RUNS = new Set(['batch-spread', 'trend', 'drift', 'tool-offset', 'capability']);

/** Feeds of the card are not asked for by these rules: the curve alone, with the feed in use. */
function Finish({ rule, values, answer }: AnswerPlotProps) {
  const say = useSay(slateTexts);
  const { noseRadius, feedPerRev, roughness } = values;
  if (typeof noseRadius !== 'number') return null;
  const feed = rule === 'feed-for-roughness' ? answer.value : numberIn(feedPerRev);
  return (
    <FinishPlot
      title={say('plotFinish')}
      {...{ noseRadius, feed }}
      feeds={[]}
      wanted={numberIn(roughness)}
    />
  );
}

/** Readings in the order they were made, in pairs, threes or fives. */
function Run({ values: { readings } }: Pick<AnswerPlotProps, 'values'>) {
  const say = useSay(slateTexts);
  if (!Array.isArray(readings) || readings.length < 4) return null;
  return <ControlChart title={say('plotRun')} subgroups={groupsOf(readings)} />;
}

/** The speed that the edge wants at this diameter, where the rule found it itself. */
function wantedSpeed({ values, answer }: Pick<AnswerPlotProps, 'values' | 'answer'>) {
  const given = numberIn(values.surfaceSpeed);
  const [ideal, diameter] = [answer.parts?.ideal?.value, values.diameter];
  if (given !== undefined) return given;
  if (typeof ideal !== 'number' || typeof diameter !== 'number') return undefined;
  return (Math.PI * diameter * ideal) / 1000;
}

function Speeds({ values, answer }: Pick<AnswerPlotProps, 'values' | 'answer'>) {
  const say = useSay(slateTexts);
  const { diameter, speeds, chuckLimit, cardLimit } = values;
  const surfaceSpeed = wantedSpeed({ values, answer });
  if (typeof diameter !== 'number' || surfaceSpeed === undefined || !Array.isArray(speeds)) {
    return null;
  }
  return (
    <SpeedPlot
      title={say('plotSpeeds')}
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
  const say = useSay(slateTexts);
  const { stockDiameter, finishDiameter } = values;
  const roughing = answer.parts?.roughingDiameters?.value;
  const finishing = answer.parts?.finishingDepth?.value;
  if (typeof stockDiameter !== 'number' || typeof finishDiameter !== 'number') return null;
  const rough = Array.isArray(roughing) ? roughing : [];
  const last = typeof finishing === 'number' && finishing > 0;
  return (
    <PassPlot
      title={say('plotPasses')}
      from={stockDiameter}
      after={last ? [...rough, finishDiameter] : rough}
      finishing={last}
      current={0}
    />
  );
}

function Reading({ values, answer }: Pick<AnswerPlotProps, 'values' | 'answer'>) {
  const say = useSay(slateTexts);
  const { reading, lower, upper, side } = values;
  if (typeof reading !== 'number' || typeof lower !== 'number' || typeof upper !== 'number') {
    return null;
  }
  const verdict = (['within', 'rework', 'lost'] as const).find((one) => one === answer.word);
  return (
    <ToleranceBar
      title={say('plotReading')}
      {...{ reading, lower, upper, verdict }}
      side={side === 'inside' ? 'inside' : 'outside'}
      decimals={3}
    />
  );
}

function numberIn(value: RuleValue | undefined): number | undefined {
  return typeof value === 'number' ? value : undefined;
}
