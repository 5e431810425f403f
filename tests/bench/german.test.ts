/** The hinge pin made in German from the first word to the last, by words and figures that a person would say. */

import { describe, expect, it } from 'vitest';
import {
  beginRun,
  hear,
  type Pace,
  type RunState,
  replayRun,
  saidNow,
  startJob,
} from '../../src/bench/index.ts';
import { limitsOf, positionOf, shownAs, translateFile } from '../../src/flow/index.ts';
import { german } from '../../src/texts/de/index.ts';
import { sayNumber } from '../../src/words/index.ts';
import { textOf } from '../flow/shipped.ts';
import { head, heardAs, sources } from './scripted.ts';

const inGerman = (path: string, text: string) => {
  const made = translateFile(path, text, textOf(path));
  if (!made.ok) throw new Error(made.faults.map(({ message }) => message).join('\n'));
  return made.text;
};

const { flow, kind, card } = sources();
const texts = {
  flow: inGerman('texts/de/gate-hinge-pin.json', flow),
  kind: inGerman('texts/de/lathe.json', kind),
  card,
};

function job() {
  const started = startJob(texts, {}, german);
  if (!started.ok) throw new Error(started.faults.join('\n'));
  return started.job;
}

const mostTurns = 600;

/** What somebody who does everything right says here. */
function rightWord(state: RunState): string {
  const { items, number } = saidNow(state);
  const answer = items.find((item) => item.kind === 'fact' || item.answer === 'correct');
  if (answer) return answer.phrases[0] ?? '';
  if (number)
    return sayNumber(rightSize(state, number), number.unit, number.decimals, { language: german });
  const choice = items.find((item) => item.kind === 'choice');
  return choice?.phrases[0] ?? 'weiter';
}

function rightSize(state: RunState, number: NonNullable<ReturnType<typeof saidNow>['number']>) {
  const { job: here, snapshot } = state;
  const step = here.flow.steps.get(positionOf(snapshot).step);
  const { readings } = snapshot.context;
  const limits = step?.kind === 'inspect' ? limitsOf(step, here.numbers, readings) : undefined;
  if (limits) {
    const { unit, decimals } = number;
    return shownAs((limits.lower + limits.upper) / 2, number.quantity, { unit, decimals }).value;
  }
  return number.expected ?? (number.min + number.max) / 2;
}

function made(pace: Pace) {
  const first = beginRun(job(), { ...head, language: 'de', pace });
  let { state } = first;
  const lines = [state.lastLine];
  const entries = [];
  for (let turn = 0; positionOf(state.snapshot).phase !== 'end'; turn += 1) {
    if (turn > mostTurns) throw new Error(`Still going at ${lines.at(-1)}`);
    const step = hear(state, heardAs(rightWord(state)));
    for (const effect of step.effects) {
      if (effect.kind === 'say') lines.push(effect.line);
      if (effect.kind === 'append') entries.push(effect.entry);
    }
    state = step.state;
  }
  return { state, lines, entries };
}

/** Small words of English that German does not have. */
const english =
  /\b(?:the|is|say|of|and|then|with|your|it|to|from|next|correct|heard|stop the|set|until|left|done|minus zero|point|millimetres?)\b/i;

describe('the hinge pin in German', () => {
  it.each(['familiar', 'first-time', 'own-pace'] as const)(
    'is made to its end at the %s pace, and no line has an English word',
    (pace) => {
      const { lines, state } = made(pace);
      expect(lines.filter((line) => english.test(line))).toEqual([]);
      expect(state.lastLine).toContain('Die Arbeit ist fertig.');
    },
  );

  it('replays to the same place with the same words', () => {
    const { state, entries } = made('familiar');
    const again = replayRun(job(), { ...head, language: 'de' }, entries);
    expect(again.ok && again.state.lastLine).toBe(state.lastLine);
  });

  it('reads back, questions and refuses in German', () => {
    const begun = beginRun(job(), { ...head, language: 'de' });
    const say = (...words: readonly string[]) => {
      let { state } = begun;
      let line = '';
      for (const word of words) {
        const step = hear(state, heardAs(word));
        line = step.effects.flatMap((one) => (one.kind === 'say' ? [one.line] : [])).join(' ');
        state = step.state;
      }
      return line;
    };
    const toBar = [
      'weiter',
      'brille auf',
      'nichts lose',
      'not halt frei',
      'spindel steht',
      'karte stimmt',
    ];
    expect(say('weiter', 'weiter')).toBe(
      'Noch nicht: Augenschutz und Kleidung, Haare, Handschuhe.',
    );
    expect(say(...toBar, 'fünfundzwanzig Komma eins')).toBe(
      'Zwei fünf Komma eins null Millimeter. Stimmt das?',
    );
    expect(say(...toBar, 'siebenundzwanzig')).toMatch(
      /^Gehört: siebenundzwanzig Millimeter\. Erwartet etwa/,
    );
    expect(say('wo bin ich')).toMatch(/^Schritt 1 von \d+: Bevor du anfängst\./);
    expect(say('warum')).toMatch(/Fachkraft/);
    expect(say('stopp')).toMatch(/^Not-Halt drücken\. Hände weg\./);
  });
});
