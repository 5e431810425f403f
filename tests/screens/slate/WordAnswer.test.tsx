import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { slateAnswer } from '../../../src/bench/index.ts';
import { LastAnswers, WordAnswer } from '../../../src/screens/slate/AskInWords.tsx';

const answer = slateAnswer('tapping drill for M ten');

test('an answer in words stands large, its working under it, its source under that', () => {
  if (!answer.ok) throw new Error(answer.fault);
  const page = renderToString(<WordAnswer reply={answer.reply} />);
  const places = ['8.5\u00a0mm', 'chart drill 8.5', 'Formula:', 'Source:'].map((part) =>
    page.indexOf(part),
  );
  expect(places.every((place) => place >= 0)).toBe(true);
  expect(places).toEqual([...places].sort((a, b) => a - b));
  expect(page).toContain('#/slate/tap-drill');
});

test('the last answers are listed with their questions', () => {
  if (!answer.ok) throw new Error(answer.fault);
  const page = renderToString(<LastAnswers last={[answer.reply]} onAsk={() => undefined} />);
  expect(page).toContain('tapping drill for M ten');
  expect(page).toContain('8.5\u00a0mm');
});
