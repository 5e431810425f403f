/** What the Bench shows, as it is in the page, and as the model says that it must be. */

import type { Page } from 'playwright-core';
import { type BenchItem, type RunState, saidNow, viewNow } from '../../src/bench/index.ts';
import { positionOf } from '../../src/flow/index.ts';

export interface Shown {
  readonly step: string;
  readonly instruction: string;
  /** Words that must each have a button, sorted. */
  readonly words: readonly string[];
  /** A size can be typed. */
  readonly number: boolean;
  readonly held: boolean;
}

const withButton: ReadonlySet<BenchItem['kind']> = new Set([
  'fact',
  'choice',
  'question',
  'answer',
  'loss',
  'trouble',
  'move',
  'drill',
]);

/** By the job's own chart and texts, without any code of the screens. */
export function shownByModel(state: RunState): Shown {
  const { lead, ask, step } = viewNow(state);
  const { items, number, advice } = saidNow(state);
  const held = positionOf(state.snapshot).phase === 'hold';
  // While held, what is asked is the instruction: the band above says that it is held.
  const lines = held && ask.shown !== '' ? [ask.shown] : [lead.shown, ask.shown];
  return {
    step: step.title,
    instruction: lines.filter((line) => line !== '').join(' '),
    words: [...new Set(items.filter(isShown(held)).map(wordOf))].sort(),
    number: number !== undefined && advice !== true && !isReadBack(items),
    held,
  };
}

/** "Hold" changes nothing while held: its key counts, and in its place the page says "held". */
function isShown(held: boolean) {
  return ({ kind, id }: BenchItem) => withButton.has(kind) && !(held && id === 'hold');
}

/** The answer to a size is waited for; another one may still be typed over it. */
function isReadBack(items: readonly BenchItem[]): boolean {
  return items.some(({ answer }) => answer === 'correct' || answer === 'keep');
}

/** Every phrase that counts now, in small letters: no button may say anything else. */
export function countsNow(state: RunState): ReadonlySet<string> {
  return new Set(
    saidNow(state).items.flatMap(({ phrases }) => phrases.map((one) => one.toLowerCase())),
  );
}

function wordOf({ phrases }: BenchItem): string {
  return phrases[0] ?? '';
}

/**
 * Waits until the page shows this and no button that does not count, and gives back what it shows in the end. A fold that
 * has just been opened may for a moment hold what the state before had.
 */
export function shownOnPage(
  page: Page,
  expected: Shown,
  counts: ReadonlySet<string>,
): Promise<{ readonly shown: Shown; readonly idle: readonly string[] }> {
  return page.evaluate(lookUntil, { expected, counts: [...counts] });
}

/** Runs in the page: it may use nothing from outside itself. */
async function lookUntil(wanted: { expected: Shown; counts: string[] }) {
  const mostMs = 5_000;
  const text = (selector: string) => document.querySelector(selector)?.textContent?.trim() ?? '';
  /** Words behind a fold count as shown: it is opened. The list of trade words is long and another test's. */
  const openFolds = () => {
    for (const fold of document.querySelectorAll<HTMLElement>('.asks [aria-expanded="false"]')) {
      if (!fold.textContent?.startsWith('Trade words')) fold.click();
    }
  };
  const look = () => {
    openFolds();
    const buttons = [...document.querySelectorAll<HTMLElement>('.bench [data-word]')].map(
      (one) => one.dataset.word ?? '',
    );
    const lines = [text('.lead-line'), text('.lead-ask')].filter((line) => line !== '');
    const shown = {
      step: text('.bench-title'),
      instruction: lines.join(' '),
      words: wanted.expected.words.filter((word) => buttons.includes(word)),
      number: document.querySelector('.pad') !== null,
      held: document.querySelector('.held-band') !== null,
    };
    return { shown, idle: buttons.filter((one) => !wanted.counts.includes(one.toLowerCase())) };
  };
  const goal = JSON.stringify(wanted.expected);
  const until = performance.now() + mostMs;
  let last = look();
  const isThere = () => JSON.stringify(last.shown) === goal && last.idle.length === 0;
  while (!isThere() && performance.now() < until) {
    await new Promise((done) => requestAnimationFrame(done));
    last = look();
  }
  return last;
}
