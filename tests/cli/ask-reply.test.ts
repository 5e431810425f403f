/** Questions as a person writes them, and answers as the command line prints them. */

import { describe, expect, it } from 'vitest';
import { replyTo } from '../../src/cli/ask-reply.ts';

function faultOf(line: string): string {
  const reply = replyTo(line.split(' '));
  return reply.fault ?? `answered ${reply.out}`;
}

describe('a written question', () => {
  it.each([
    ['spindle-speed diameter', '"diameter" is not name=value'],
    ['spindle-speed diamter=25', 'Did you mean "diameter"?'],
    ['spindle-speed diameter=25 diameter=26', 'diameter is given twice'],
    ['spindle-speed diameter=25kg', 'has the unit "kg"; allowed here: mm, in, thou'],
    ['spindle-speed diameter=25', 'surfaceSpeed is missing; give'],
    ['spindle-speed diameter=-1 surfaceSpeed=28', 'above 0 up to 3000 mm'],
    ['--wrong', '"--wrong" is not an option'],
    ['--json', 'Name a rule'],
  ])('%s is refused: %s', (line, says) => {
    expect(faultOf(line)).toContain(says);
  });

  it.each([
    ['material=brass', 'free-cutting brass'],
    ['material=Stainless Steel', '304'],
    ['material=copper', 'copper'],
  ])('knows %s by the name people say', (pair, title) => {
    const reply = replyTo(['cutting-speed', pair, 'operation=turning', 'coolant=dry']);
    expect('out' in reply ? reply.out : reply.fault).toContain(title);
  });

  it('guesses the option that has the word in it', () => {
    expect(faultOf('cutting-speed material=cast operation=turn')).toContain(
      'Did you mean "grey-cast-iron"?',
    );
  });

  it('prints no digit that a number cannot hold', () => {
    const reply = replyTo([
      'next-pass',
      'measured=30',
      'finishDiameter=29.4',
      'deepestCut=1',
      'finishAllowance=0',
      'dialReads=radius',
      'graduation=0.1',
    ]);
    expect('out' in reply && reply.out).toContain('"value":0.3,');
  });

  it('explains with formula, working, limit, source and cautions', () => {
    const reply = replyTo([
      'card-speed',
      'diameter=25',
      'surfaceSpeed=28',
      'speeds=70,350',
      '--explain',
    ]);
    const text = 'out' in reply ? reply.out : '';
    for (const head of ['Answer:', 'Formula:', 'Working:', 'Limit:', 'Source:', 'Mind:']) {
      expect(text).toContain(head);
    }
    expect(text).toContain('1000 × 28 m/min ÷ (π × 25 mm) = 356.5 rev/min');
  });

  it('stays JSON when JSON is asked beside an explanation', () => {
    const reply = replyTo(['drill-point', 'diameter=10', '--explain', '--json']);
    expect(JSON.parse('out' in reply ? reply.out : '')).toMatchObject({ rule: 'drill-point' });
  });
});

describe('--json', () => {
  const json = (line: string): unknown => JSON.parse(replyTo(line.split(' ')).out ?? 'null');

  it('with --explain holds formula, source and what was given', () => {
    const told = json('spindle-speed diameter=1in surfaceSpeed=28 --explain --json');
    expect(told).toMatchObject({
      formula: 'n = 1000 v ÷ (π D)',
      source: expect.stringContaining('Groover'),
      given: { diameter: 25.4, surfaceSpeed: 28 },
      unit: 'rev/min',
    });
  });

  it('gives a fault as JSON beside its sentence', () => {
    const words = ['spindle-speed', 'diameter=25', '--json'];
    const { fault } = replyTo(words);
    expect(fault).toMatch(/^surfaceSpeed is missing/);
    expect(JSON.parse(replyTo(words).out ?? 'null')).toEqual({ fault });
  });
});
