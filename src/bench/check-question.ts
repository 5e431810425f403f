/**
 * A check question of the first-time pace: put beside the chart, which does not know it. A wrong answer is explained and
 * asked once more, then passed on; any word that moves the job leaves it behind. It is no gate and counts for nothing.
 */

import {
  type CheckQuestion,
  type FlowSnapshot,
  type Job,
  planAt,
  positionOf,
} from '../flow/index.ts';
import { benchTexts, type Language, sayIn } from '../texts/index.ts';
import { joinList } from '../words/index.ts';
import { sentence } from './sentence.ts';

export interface AskedQuestion {
  readonly step: string;
  readonly asked: CheckQuestion;
  /** True once a wrong answer was explained. */
  readonly again: boolean;
}

/** The question that is due on coming to a step, where nothing turns; each is put once in a run. */
export function questionAt(
  job: Job,
  at: FlowSnapshot,
  explained: readonly string[],
): AskedQuestion | null {
  const { step, phase } = positionOf(at);
  const asked = planAt(job, at)?.step.question;
  const quiet = phase === 'gate' || phase === 'open' || phase === 'dial';
  if (!asked || !quiet || explained.includes(`question:${step}`)) return null;
  return { step, asked, again: false };
}

/** "Why is the key taken out at once? Say it is thrown, or it is lost." */
export function questionLine({ asked }: AskedQuestion, language: Language): string {
  const words = asked.options.map((option) => option.word);
  const say = sayIn(language, benchTexts);
  return say('sayOneOf', { ask: asked.ask, words: joinList(words, 'or', language) });
}

export interface QuestionAnswer {
  /** What is said: never a bare "wrong". */
  readonly line: string;
  /** The question goes on once after a wrong answer; then it is over. */
  readonly question: AskedQuestion | null;
  readonly right: boolean;
}

/** What an answer comes to: explained in any case. */
export function answerQuestion(
  question: AskedQuestion,
  word: string,
  language: Language,
): QuestionAnswer {
  const say = sayIn(language, benchTexts);
  const { options } = question.asked;
  const chosen = options.find((option) => option.word === word);
  const right = options.find((option) => option.right);
  if (chosen?.right)
    return { line: say('right', { because: chosen.because }), question: null, right: true };
  const why = say('notThat', { because: chosen?.because ?? '' });
  if (!question.again) {
    const again = { ...question, again: true };
    return { line: `${why} ${questionLine(again, language)}`, question: again, right: false };
  }
  const answer = right
    ? say('answerIs', { answer: sentence(right.word), because: right.because })
    : '';
  return { line: `${why} ${answer}`.trim(), question: null, right: false };
}
