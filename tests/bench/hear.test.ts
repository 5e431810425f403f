import { describe, expect, test } from 'vitest';
import { missed, saidNow } from '../../src/bench/index.ts';
import { begun, heardAs, hears, throughGate, toBar, toFirstGate } from './scripted.ts';

describe('moving on', () => {
  test('a refused next names what is missing and nothing else', () => {
    const turn = hears(begun(), 'next', 'next');
    expect(turn.at).toBe('protect/open');
    expect(turn.line).toBe('Not yet: eye protection and clothing, hair, gloves.');
    expect(turn.entries.at(-1)?.outcome).toBe('refused');
  });

  test('a word of the machine that does not count in a hold is answered by the word that goes on', () => {
    const held = hears(begun(), ...toBar, 'hold');
    const { effects } = missed(held.state, heardAs('guard closed', { from: 'speech' }));
    expect(effects).toContainEqual(
      expect.objectContaining({ kind: 'say', line: 'Not yet: say carry on.' }),
    );
  });

  test.each(['yes', 'okay', 'done', 'Yeah.'])('a bare "%s" passes no gate', (word) => {
    const turn = hears(begun(), 'next', word);
    expect(turn.at).toBe('protect/open');
    expect(turn.state.snapshot.context.facts.eyes).toBe('unknown');
    expect(turn.line).toBe('Name it: say glasses on.');
  });

  test('an answer to a gate is heard past fillers and case, and only one thing is asked', () => {
    const turn = hears(begun(), 'next', 'Um, glasses on please');
    expect(turn.line).toBe('Is nothing loose: sleeves, hair, rings, gloves off?');
  });

  test('a denial never passes for the state it denies', () => {
    const turn = hears(begun(), 'next', 'glasses not on');
    expect(turn.state.snapshot.context.facts.eyes).toBe('unknown');
  });

  test('an unsure ear is asked to say a gate word again', () => {
    const turn = hears(begun(), 'next', heardAs('glasses on', { from: 'speech', confidence: 0.3 }));
    expect(turn.line).toBe('Did you say glasses on? Say it again.');
    expect(turn.state.snapshot.context.facts.eyes).toBe('unknown');
  });

  test('a right word at the wrong moment is refused, not misheard', () => {
    expect(hears(begun(), 'next', 'guard closed').line).toMatch(/^Not yet: eye protection/);
  });
});

describe('what is not understood', () => {
  test('is asked again twice, then the keys are offered once, then it stays silent', () => {
    const lines: string[] = [];
    let turn = begun();
    for (let time = 0; time < 5; time++) {
      turn = hears(turn, 'banana');
      lines.push(turn.line);
    }
    expect(lines).toEqual([
      'Say again.',
      'Say again.',
      'I cannot hear you well. Use the keys or the buttons.',
      '',
      '',
    ]);
  });

  test('counts from the start again once something is understood', () => {
    expect(hears(begun(), 'banana', 'banana', 'why', 'banana').line).toBe('Say again.');
  });

  test('people talking behind are not answered', () => {
    const turn = hears(begun(), 'did you see the match last night it was great');
    expect(turn.line).toBe('');
    expect(turn.entries).toEqual([]);
  });
});

describe('a number', () => {
  const bar = hears(begun(), ...toBar);

  test('is read back digit by digit and taken only after it is confirmed', () => {
    const said = hears(bar, 'twenty-four point nine five');
    expect(said.line).toBe('Two four point nine five millimetres. Correct?');
    expect(said.at).toBe('measure-bar/open');
    expect(hears(said, 'correct').state.snapshot.context.readings.barNow).toBe(24.95);
  });

  test('is said again on repeat while it waits', () => {
    const waiting = hears(bar, '24.95');
    expect(hears(waiting, 'repeat').line).toBe(waiting.line);
    const questioned = hears(bar, '26.9');
    expect(hears(questioned, 'repeat').line).toBe(questioned.line);
  });

  test('wrong is not taken', () => {
    const turn = hears(bar, '24.95', 'wrong');
    expect(turn.line).toBe('Say the size again.');
    expect(turn.state.snapshot.context.readings).toEqual({});
  });

  test('is corrected in one breath', () => {
    const turn = hears(bar, 'twenty five point nine', 'no, twenty-four point nine');
    expect(turn.line).toBe('Two four point nine zero millimetres. Correct?');
    expect(hears(turn, 'correct').state.snapshot.context.readings.barNow).toBe(24.9);
  });

  test('far from the expected is questioned with both figures', () => {
    const turn = hears(bar, 'twenty six point nine');
    expect(turn.line).toBe(
      'Heard twenty-six point nine millimetres. Expected near twenty-five millimetres. Say it again, or say keep.',
    );
    expect(hears(turn, 'yes').line).toBe('Say keep, or say the size again.');
    expect(hears(turn, 'keep').state.snapshot.context.readings.barNow).toBe(26.9);
  });

  test('outside the plausible range is never taken', () => {
    const turn = hears(bar, 'two hundred and fifty');
    expect(turn.line).toMatch(/^Heard two hundred and fifty/);
    expect(hears(turn, 'correct').at).toBe('measure-bar/open');
  });

  test('in inches is taken for what it is', () => {
    const turn = hears(bar, 'nine eighty thou', 'correct');
    expect(turn.state.snapshot.context.readings.barNow).toBeCloseTo(24.892, 9);
  });

  test('while it waits, moves and gates do not count, but stop and repeat do', () => {
    const waiting = hears(bar, '24.95');
    expect(saidNow(waiting.state).items.map((item) => item.id)).toEqual(
      expect.arrayContaining(['answer:correct', 'answer:wrong', 'stop', 'hold', 'ask:repeat']),
    );
    expect(hears(waiting, 'next').at).toBe('measure-bar/open');
    expect(hears(waiting, 'stop').at).toBe('measure-bar/hold');
  });
});

describe('questions', () => {
  const gate = hears(begun(), ...toBar, ...toFirstGate);

  test.each([
    ['speed', 'Three hundred. The surface speed rules.'],
    ['feed', 'Zero point one millimetres a rev.'],
    ['depth', 'Zero point five millimetres.'],
    ['how much is left', 'No pass is being cut.'],
    ['where am i', 'Step 12 of 43: Face the end. Open: tool place, speed, guard and hands.'],
    [
      'why',
      'A tool that touches when the spindle starts digs in at once. A square, clean end is where every length is measured from.',
    ],
  ])('"%s" is answered at once', (question, answer) => {
    const turn = hears(gate, question);
    expect(turn.line).toBe(answer);
    expect(turn.at).toBe('face/gate');
  });

  test('why tells the reason of the step and what can hurt in it, each once', () => {
    const cutting = hears(gate, ...throughGate, 'spindle running');
    expect(hears(cutting, 'why').line).toBe(
      'A square, clean end is where every length is measured from. Towards the centre the surface speed falls to nothing. Do not force the feed.',
    );
    const key = hears(begun(), ...toBar, '25', 'correct', 'work clamped');
    expect(key.at).toBe('key-out/open');
    expect(hears(key, 'why').line).toBe(
      'A key left in the chuck is thrown when the spindle starts.',
    );
  });

  test('repeat says the last instruction, not the last answer', () => {
    expect(hears(gate, 'speed', 'repeat').line).toBe(gate.line);
  });

  test('what can I say lists the words that move the job', () => {
    expect(hears(gate, 'what can i say').line).toContain('tool clear');
  });
});

describe('danger', () => {
  const cutting = hears(begun(), ...toBar, ...toFirstGate, ...throughGate, 'spindle running');

  test('stop gives the drill at once and claims nothing', () => {
    const turn = hears(cutting, 'stop');
    expect(turn.line).toMatch(/^Press the emergency stop\. Hands clear\./);
    expect(turn.line).not.toMatch(/stopped the|is stopped|have stopped/i);
    expect(turn.at).toBe('face/hold');
  });

  test('a lost guard holds, names it, and comes back to the same step', () => {
    const held = hears(cutting, 'guard open');
    expect(held.line).toBe('Lost: guard. Hold. Stop the spindle. Say spindle stopped.');
    const back = hears(held, 'spindle stopped', 'tool clear', 'guard closed', 'carry on');
    expect(back.at).toBe('face/start');
  });

  test('nothing said about what turns can be taken back by "wrong"', () => {
    expect(saidNow(cutting.state).items.some((item) => item.id === 'answer:wrong')).toBe(false);
  });
});

describe('wrong', () => {
  test('takes back the last accepted word', () => {
    const turn = hears(begun(), 'next', 'glasses on', 'wrong');
    expect(turn.state.snapshot.context.facts.eyes).toBe('unknown');
    expect(turn.line).toContain('Is your eye protection on?');
    expect(turn.entries.at(-1)?.event).toEqual({ type: 'undo' });
  });

  test('takes back one word, not two', () => {
    const turn = hears(begun(), 'next', 'glasses on', 'wrong', 'wrong');
    expect(turn.at).toBe('protect/open');
  });
});

describe('"why that"', () => {
  const gate = hears(begun(), ...toBar, ...toFirstGate);

  test('tells what the figure told last comes from, the limit that ruled, and the source', () => {
    expect(hears(gate, 'speed', 'why that').line).toBe(
      'Speed three hundred: from bar diameter twenty-five millimetres and surface speed facing twenty-eight metres a minute. The surface speed rules. Source: Groover, Fundamentals of Modern Manufacturing 4e.',
    );
    expect(hears(gate, 'feed', 'why that').line).toMatch(
      /^Feed zero point one millimetres a rev: from feed wanted facing .* Source: common practice, no source\.$/,
    );
  });

  test('is about the figure that matters when none was told', () => {
    expect(hears(gate, 'why that').line).toMatch(/^Speed three hundred: from /);
  });

  test('follows a change of tool', () => {
    expect(hears(gate, 'carbide', 'why that').line).toMatch(
      /^Speed one thousand two hundred and fifty-five: from /,
    );
  });
});

describe('the record of what was heard', () => {
  test('has the words, how sure the ear was, what they were taken for, and what came of them', () => {
    const gate = hears(begun(), 'next');
    const spoken = heardAs('um glasses on', { from: 'speech', confidence: 0.8, at: 7_000 });
    expect(hears(gate, spoken).entries.at(-1)).toMatchObject({
      at: 7_000,
      step: 'protect',
      heard: { text: 'um glasses on', from: 'speech', confidence: 0.8 },
      event: { type: 'fact', fact: 'eyes', state: 'on' },
      outcome: 'moved',
      said: 'Is nothing loose: sleeves, hair, rings, gloves off?',
    });
  });

  test('has what was not understood, too', () => {
    const spoken = heardAs('banana', { from: 'speech', confidence: 0.4 });
    expect(hears(begun(), spoken).entries.at(-1)).toMatchObject({
      heard: { text: 'banana', confidence: 0.4 },
      event: null,
      outcome: 'unclear',
      said: 'Say again.',
    });
  });
});
