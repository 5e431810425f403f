/** What a word means, where a part is, and check questions: answered beside the run, which does not move. */

import { describe, expect, it } from 'vitest';
import { beginRun, findTerm, glossaryIn, listenFor } from '../../src/bench/index.ts';
import { shippedKinds } from '../../src/cli/flow-files.ts';
import { englishLanguage, machineTexts, tableIn } from '../../src/texts/index.ts';
import { begun, head, heardAs, hears, shippedJob, type Turn, toBar } from './scripted.ts';

const spoken = (text: string) => heardAs(text, { from: 'speech' });

describe('a trade word', () => {
  it('is told in our own words, however it is asked for', () => {
    const about = 'A round holder on the spindle whose jaws grip the work.';
    for (const ask of [
      'what is a chuck',
      "what's a chuck?",
      'What is the chuck',
      'what is chuck',
    ]) {
      const turn = hears(begun(), spoken(ask));
      expect(turn.line).toBe(about);
      expect(turn.at).toBe(begun().at);
    }
    expect(hears(begun(), spoken('what are half nuts')).line).toContain('closes on the lead screw');
  });

  it('that nobody wrote of is said so to keys, and is no question from the room', () => {
    expect(hears(begun(), 'what is a widget').line).toBe('No word for that is written.');
    expect(hears(begun(), spoken('what is the matter with you today')).line).toBe('');
  });

  it('is listened for by an ear with a list only where the step uses it', () => {
    const { phrases } = listenFor(hears(begun(), ...toBar).state);
    expect(phrases.filter((phrase) => phrase.startsWith('what is'))).toEqual([]);
    const asked = listenFor(hears(begun(), ...toBar, 'what is').state).phrases;
    expect(asked).toContain('bar');
    expect(asked).not.toContain('band saw');
    const asks = asked.filter((phrase) => !phrases.includes(phrase));
    expect(asks.length).toBeLessThanOrEqual(8);
  });
});

describe('a part of the machine', () => {
  it('is lit and told when it is asked where it is, until the job moves', () => {
    const turn = hears(begun(), 'where is the tailstock');
    expect(turn.state.lit).toBe('tailstock');
    expect(turn.line).toBe('The sliding head on the right that carries centre or drill.');
    expect(hears(turn, 'next').state.lit).toBeUndefined();
  });

  it('is found by its other names too', () => {
    expect(hears(begun(), 'where is the top slide').state.lit).toBe('compound');
    expect(hears(begun(), 'show me the red button').state.lit).toBe('emergency-stop');
    expect(hears(begun(), 'what is the quill').state.lit).toBe('quill');
  });

  it('that this machine has not is said so', () => {
    const turn = hears(begun(), 'where is the knee');
    expect(turn.line).toBe('This machine has no such part.');
    expect(turn.state.lit).toBeUndefined();
  });
});

describe('the glossary', () => {
  const terms = glossaryIn(englishLanguage);

  it('has a hundred and twenty words at least, each told in one or two short sentences', () => {
    expect(terms.length).toBeGreaterThanOrEqual(120);
    const bad = terms.filter(({ about }) => about.split(' ').length > 26 || !/[.]$/.test(about));
    expect(bad.map(({ id }) => id)).toEqual([]);
  });

  it('has no name that means two things', () => {
    const names = terms.flatMap(({ id, term, also }) =>
      [term, ...also].map((name) => [name.toLowerCase(), id] as const),
    );
    const twice = names.filter(([name, id]) =>
      names.some(([other, owner]) => other === name && owner !== id),
    );
    expect(twice).toEqual([]);
  });

  it('has every part of every machine that is pictured', () => {
    const pictured = tableIn(englishLanguage, machineTexts);
    const parts = Object.values(pictured).flatMap((text) =>
      typeof text === 'string' ? [] : [text[0] ?? ''],
    );
    expect(parts.length).toBeGreaterThan(50);
    const named = [...shippedKinds().values()].flatMap((kind) =>
      kind.parts.map(({ name }) => name),
    );
    const missing = [...parts, ...named].filter((name) => !findTerm(name, englishLanguage));
    expect([...new Set(missing)]).toEqual([]);
  });
});

describe('a check question', () => {
  const atQuestion = (): Turn => {
    const { state } = beginRun(shippedJob(), { ...head, pace: 'first-time' });
    return hears({ ...begun(), state }, 'next', 'glasses on', 'nothing loose');
  };

  it('is put once, on coming to its step', () => {
    expect(atQuestion().line).toContain(
      'What does this page stop? Say nothing at all or the spindle.',
    );
    expect(hears(atQuestion(), 'nothing at all', 'back', 'next').state.question).toBeNull();
  });

  it('explains a right answer and goes on to what is to be done', () => {
    const turn = hears(atQuestion(), 'nothing at all');
    expect(turn.line).toMatch(
      /^Yes: It only talks\..*Find the emergency stop|^Yes: It only talks\./,
    );
    expect(turn.state.question).toBeNull();
    expect(turn.entries.at(-1)?.event).toEqual({
      type: 'question',
      step: 'know-the-stop',
      word: 'nothing at all',
      right: true,
    });
  });

  it('explains a wrong answer and asks once more, then explains and goes on', () => {
    const once = hears(atQuestion(), 'the spindle');
    expect(once.line).toMatch(/^Not that: No wire leads from here to the machine\. What does/);
    const twice = hears(once, 'the spindle');
    expect(twice.line).toContain('Nothing at all: It only talks.');
    expect(twice.state.question).toBeNull();
  });

  it('holds nothing up: it is passed on, and any word that answers the step leaves it behind', () => {
    const passed = hears(atQuestion(), 'pass on');
    expect(passed.state.question).toBeNull();
    expect(passed.line).toContain('Is the emergency stop released');
    expect(hears(atQuestion(), 'next').state.question).toBeNull();
    const answered = hears(atQuestion(), 'stop released');
    expect(answered.state.question).toBeNull();
    expect(answered.state.snapshot.context.facts['emergency-stop']).toBe('released');
  });

  it('counts for nothing: right or wrong, the same is asked afterwards', () => {
    const right = hears(atQuestion(), 'nothing at all').state.snapshot;
    const wrong = hears(atQuestion(), 'the spindle', 'the spindle').state.snapshot;
    expect(right.context).toEqual(wrong.context);
    expect(right.value).toEqual(wrong.value);
  });
});
