import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { AnswerPlot } from '../../../src/screens/slate/AnswerPlot.tsx';
import { answerRule, findRule, readAsked } from '../../../src/trade/index.ts';

function drawn(asked: string): string {
  const [name = '', ...pairs] = asked.split(' ');
  const rule = findRule(name);
  const read = rule && readAsked(rule, pairs);
  const answer = rule && read?.ok ? answerRule(rule, read.value) : undefined;
  if (!read?.ok || !answer?.ok) throw new Error(asked);
  const values = Object.fromEntries(
    Object.entries(read.value).flatMap(([key, value]) =>
      value === undefined ? [] : [[key, value]],
    ),
  );
  return renderToString(<AnswerPlot rule={name} values={values} answer={answer} />);
}

describe('an answer on the Slate with a picture', () => {
  test.each([
    'card-speed diameter=25 surfaceSpeed=28 speeds=70,200,350,450',
    'speed-for-material material=free-cutting-brass diameter=25 speeds=70,200,350,450,900',
    'pass-plan stockDiameter=60 finishDiameter=42 deepestCut=2',
    'roughness-average feedPerRev=0.2 noseRadius=0.4',
    'feed-for-roughness roughness=1.6 noseRadius=0.4',
    'judge-reading reading=24.98 lower=24.95 upper=25.05',
    'drift readings=25.00,25.01,25.02,25.03 lower=24.95 upper=25.05',
  ])('is drawn with a text for those who do not see it: %s', (asked) => {
    const page = drawn(asked);
    expect(page).toMatch(/<svg[^>]*role="img"/);
    expect(page).toMatch(/<title|aria-label/);
    expect(page).not.toMatch(/NaN|Infinity/);
  });

  test('is left out where there is nothing to see', () => {
    expect(drawn('spindle-speed diameter=25 surfaceSpeed=28')).toBe('');
  });
});
