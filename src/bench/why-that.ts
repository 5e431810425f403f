/** What stands behind a figure, in one breath: what it comes from, which limit ruled, and the source. */

import type { Ask, Behind, Figure, View } from '../flow/index.ts';
import { benchTexts, type Language, midSentence, sayIn } from '../texts/index.ts';
import { joinList } from '../words/index.ts';
import { sentence } from './sentence.ts';

/** More than this many numbers cannot be followed by ear; the screen shows them all. */
const mostGiven = 3;

/** The figures of the lines that stand, the last told first. */
function toldNow({ lead, ask }: View): readonly Figure[] {
  return [...(lead.figures ?? []), ...(ask.figures ?? [])].reverse();
}

/**
 * The figure a "why that" is about: the one last asked for while it still stands, else the last one that the
 * present line tells, else the one that matters here.
 */
export function figureAsked(view: View, last: string | undefined): Figure | undefined {
  const asked = view.figures.find((one) => one.id === last);
  const [told] = toldNow(view);
  if (asked ?? told) return asked ?? told;
  const ids = [...(view.phase === 'dial' ? ['dial'] : []), 'speed', 'dial'];
  const found = ids.map((id) => view.figures.find((one) => one.id === id));
  return found.find((figure) => figure !== undefined) ?? view.figures[0];
}

/** The figure an answered question was about. */
export function figureOfAsk(ask: Ask, view: View): string | undefined {
  const id = ask === 'depth' && view.figures.some((one) => one.id === 'cut') ? 'cut' : ask;
  return view.figures.find((one) => one.id === id)?.id;
}

/** "Speed three hundred: from bar diameter twenty-five millimetres. The surface speed rules. Source: Groover." */
export function whyThat(figure: Figure, language: Language): string {
  return behindLine(`${figure.label} ${figure.spoken}`, figure, language);
}

export function behindLine(head: string, behind: Partial<Behind>, language: Language): string {
  const say = sayIn(language, benchTexts);
  const { given = [], working = '', ruledBy, source } = behind;
  const numbers = given
    .slice(0, mostGiven)
    .map(({ label, spoken }) => `${midSentence(language, label.replaceAll(',', ''))} ${spoken}`);
  const figure = sentence(head);
  const row = { figure, numbers: joinList(numbers, 'and', language) };
  const worked = working === '' ? `${figure}.` : say('whyWorking', { figure, working });
  return [
    numbers.length > 0 ? say('whyFrom', row) : worked,
    ruledBy === undefined ? '' : say('rules', { limit: sentence(ruledBy) }),
    source === undefined ? '' : say('source', { source: firstSource(source) }),
  ]
    .filter((text) => text !== '')
    .join(' ');
}

/** The first work named; pages, ranges and further works are to be read, not heard. */
function firstSource(source: string): string {
  const [head = source, ...tail] = source.split(': ');
  const isRanges = /\d-\d/.test(head) && tail.length > 0;
  const work = isRanges ? tail.join(': ') : head === 'from memory' ? source : head;
  return (work.split(/ \(|; /)[0] ?? work).replace(/\.$/, '');
}
