/** Fault walks by words: what is asked first, what is offered, and the way back with new numbers. */

import { describe, expect, it } from 'vitest';
import { listenFor, replayRun, saidNow } from '../../src/bench/index.ts';
import { figuresNow, positionOf, walkNow } from '../../src/flow/index.ts';
import { latheKind } from '../flow/shipped.ts';
import { begun, hears, type Turn, throughGate, toBar, toFirstGate } from './scripted.ts';

const toStart = [...toBar, ...toFirstGate, ...throughGate];
const cutting = hears(begun(), ...toStart, 'spindle running');
/** At the gate again after its first cut was broken off. */
const cutAndBack = hears(cutting, 'it chatters', 'spindle stopped', 'carry on');
const troublesOf = ({ state }: Pick<Turn, 'state'>) =>
  saidNow(state).items.flatMap(({ id, kind }) => (kind === 'trouble' ? [id] : []));
const walk = (turn: Turn) => positionOf(turn.state.snapshot).walk;
const speedAt = ({ state }: Turn) => state.job.numbers.number({ working: 'faceSpeed' }, {});

describe('trouble', () => {
  it('is told by the words that count at this step', () => {
    expect(hears(cutting, 'trouble').line).toBe(
      'Say will not start, it chatters, poor finish or tool rubs.',
    );
    expect(hears(begun(), 'trouble').line).toBe(
      'No trouble is written for this moment. Say repeat, and go on.',
    );
  });

  it('that only a cut can show does not count before anything was cut, and it is said when it does', () => {
    const gate = hears(begun(), ...toBar, ...toFirstGate);
    expect(gate.at).toBe('face/gate');
    const onceCut =
      'Say will not start. Once it cuts here, say it chatters, poor finish or tool rubs.';
    for (const at of [gate, hears(gate, ...throughGate)]) {
      for (const word of ['trouble', 'poor finish', 'it chatters', 'tool rubs']) {
        const told = hears(at, word);
        expect(told.line).toBe(onceCut);
        expect(told.state.snapshot).toBe(at.state.snapshot);
      }
      expect(troublesOf(at)).toEqual(['trouble:will-not-start']);
    }
    const held = hears(gate, 'hold');
    expect(hears(held, 'poor finish').line).toBe(
      'First what is asked here. Before the next start, say will not start. ' +
        'Once it cuts here, say it chatters, poor finish or tool rubs.',
    );
    expect(walk(hears(gate, 'will not start'))?.id).toBe('will-not-start');
  });

  it('opens at a gate, where what the last cut left is seen, and leads back to that gate', () => {
    const gate = cutAndBack;
    expect(gate.at).toBe('face/gate');
    expect(hears(gate, 'trouble').line).toBe(
      'Say will not start, it chatters, poor finish or tool rubs.',
    );
    const turn = hears(gate, 'poor finish');
    expect(walk(turn)).toEqual({ id: 'poor-finish', item: 'settle' });
    const back = hears(turn, 'spindle stopped', 'carry on');
    expect(back.at).toBe('face/gate');
    expect(hears(back, 'next').line).toMatch(/^Not yet: .*tool place, guard and hands\.$/);
  });

  it('of another sort than the cuts before could show waits for the first cut of its own step', () => {
    const cut = ['spindle running', 'tool clear', 'spindle stopped'];
    const dial = hears(begun(), ...toStart, ...cut, ...cut);
    expect(dial.at).toBe('turn-shank/dial');
    expect(hears(dial, 'size is off').line).toBe(
      'Say will not start, it chatters, poor finish or tool rubs. ' +
        'Once it cuts here, say it cuts a taper or size is off.',
    );
    expect(troublesOf(hears(dial, 'next', 'spindle running'))).toHaveLength(6);
  });

  it('counts after a hold, and after a break by the record, as before it', () => {
    const { job, head } = cutAndBack.state;
    const again = replayRun(job, head, cutAndBack.entries);
    expect(again.ok && again.state.cutShows).toEqual(['chatter', 'poor-finish', 'tool-rubs']);
    expect(again.ok && troublesOf(again)).toEqual(troublesOf(cutAndBack));
    const facts = ['tool locked', 'turns free', 'tool clear', 'guard closed', 'hands clear'];
    const carriedOn = hears(cutting, 'hold', 'spindle stopped', ...facts, 'carry on');
    expect(carriedOn.at).toBe('face/start');
    expect(troublesOf(carriedOn)).toEqual(troublesOf(cutAndBack));
  });

  it('is named by its words where a person waits for them: an ear of few phrases hears them after "trouble"', () => {
    expect(listenFor(cutAndBack.state).phrases).not.toContain('poor finish');
    expect(listenFor(hears(cutAndBack, 'trouble').state).phrases).toContain('poor finish');
  });

  it('says what comes first, or where it counts, wherever it does not count', () => {
    const stopping = hears(cutting, 'tool clear');
    expect(hears(stopping, 'poor finish').line).toBe(
      'First what is asked here. Before the next start, say will not start, it chatters, poor finish or tool rubs.',
    );
    const inside = hears(cutting, 'it chatters', 'spindle stopped');
    expect(hears(inside, 'poor finish').line).toBe(
      'You are at a trouble already. Say next for its next cause, or carry on.',
    );
    const { job, snapshot } = stopping.state;
    const context = {
      ...snapshot.context,
      facts: { ...snapshot.context.facts, spindle: 'stopped' },
    };
    const measuring = job.machine.resolveState({ value: { 'measure-length': 'open' }, context });
    const at = { ...stopping, state: { ...stopping.state, snapshot: measuring } };
    for (const word of ['trouble', 'poor finish']) {
      expect(hears(at, word).line).toBe(
        'Trouble belongs to a cut. Say back to return to it, or go on here.',
      );
    }
  });

  it('makes it stand still before anything is looked at', () => {
    const turn = hears(cutting, 'it chatters');
    expect(walk(turn)).toEqual({ id: 'chatter', item: 'settle' });
    expect(turn.line).toContain('Wind the tool clear. Then stop the spindle.');
    expect(walk(hears(turn, 'next'))).toEqual({ id: 'chatter', item: 'settle' });
    expect(walk(hears(turn, 'spindle stopped'))).toEqual({ id: 'chatter', item: 'overhang' });
  });

  it('asks for what hands have changed before it goes on', () => {
    const turn = hears(cutting, 'it chatters', 'spindle stopped');
    expect(turn.line).toContain('Say tool locked.');
    expect(walk(hears(turn, 'next'))?.item).toBe('overhang');
    expect(walk(hears(turn, 'tool locked', 'next'))?.item).toBe('slower');
  });

  it('comes back to the gate of the step with the next lower speed of the card', () => {
    // The card of the example has 300 and, below it, 190 rev/min (flows/machines/metric-lathe.json).
    expect(speedAt(cutting)).toBe(300);
    const offered = hears(cutting, 'it chatters', 'spindle stopped', 'tool locked', 'next');
    expect(offered.line).toContain(
      'One step lower is one hundred and ninety. Say lower speed, or next.',
    );
    const slower = hears(offered, 'lower speed');
    expect(speedAt(slower)).toBe(190);
    const back = hears(slower, 'next', 'next', 'next', 'tool locked', 'next');
    expect(back.at).toBe('face/gate');
    expect(hears(back, 'next').line).toMatch(/speed/);
    expect(hears(back, ...throughGate).at).toBe('face/start');
  });

  it('keeps the old speed where none is taken', () => {
    const words = ['tool locked', 'next', 'next', 'next', 'next', 'tool locked', 'next'];
    const back = hears(cutting, 'it chatters', 'spindle stopped', ...words);
    expect(back.at).toBe('face/gate');
    expect(speedAt(back)).toBe(300);
  });

  it('can be left at any cause, and then the gate asks for everything again', () => {
    const back = hears(cutting, 'it chatters', 'spindle stopped', 'carry on');
    expect(back.at).toBe('face/gate');
    expect(hears(back, 'next').line).toMatch(/^Not yet: /);
  });
});

describe('a taper where there should be none', () => {
  const atPasses = (): Turn => {
    // Straight into the first pass: face and touch are each started, cut, cleared and stopped.
    const cut = ['spindle running', 'tool clear', 'spindle stopped'];
    const { dial, start } = { dial: 'next', start: 'spindle running' };
    return hears(begun(), ...toStart, ...cut, ...cut, dial, start);
  };
  const atTailstock = () => hears(atPasses(), 'it cuts a taper', 'spindle stopped', 'next');

  it('is given as half the difference where the measured length is the whole one', () => {
    expect(atPasses().at).toBe('turn-shank/cutting');
    const asked = atTailstock();
    expect(asked.line).toContain('Say how much they differ, or next.');
    const read = hears(asked, '0.04');
    expect(read.line).toContain('Correct?');
    // Set-over = L (D − d) ÷ (2 l): by hand, 0.04 ÷ 2 with l = L.
    expect(hears(read, 'correct').line).toBe(
      'Move the tailstock zero point zero two millimetres: towards you if the tailstock end is larger.',
    );
  });

  it('takes the advice into the record and moves nothing', () => {
    const asked = atTailstock();
    const told = hears(asked, '0.04', 'correct');
    expect(told.state.snapshot).toEqual(asked.state.snapshot);
    expect(told.state.readings).toEqual(asked.state.readings);
    expect(hears(told, 'why that').line).toContain('0.04');
    expect(walk(hears(asked, 'next'))?.item).toBe('wear');
  });

  it('refuses a difference that cannot be', () => {
    expect(hears(atTailstock(), '25').line).toMatch(/must be between/);
  });
});

describe('the fault walks of the lathe', () => {
  const { walks } = latheKind();

  it('are the eight that a lathe needs, each with its causes, a reason and where it is from', () => {
    expect(walks.map(({ id }) => id)).toEqual([
      'will-not-start',
      'chatter',
      'poor-finish',
      'taper',
      'size-off',
      'drill-wanders',
      'tool-rubs',
      'parting-grabs',
    ]);
    const bare = walks.flatMap(({ items }) => items.filter((item) => !item.why || !item.source));
    expect(bare).toEqual([]);
  });

  it('ask to lock again what a hand is told to change', () => {
    const open = walks.flatMap(({ id, items }) =>
      items
        .filter(({ say }) => /lock the tool|lock it/i.test(say))
        .filter(({ needs }) => needs['tool-lock'] !== 'locked' && needs.tailstock !== 'locked')
        .map((item) => `${id}/${item.id}`),
    );
    expect(open).toEqual([]);
  });

  it('are shown with the part of the machine that each is about, where there is one', () => {
    const turn = hears(cutting, 'it chatters', 'spindle stopped');
    expect(walkNow(turn.state.job, turn.state.snapshot)?.item?.part).toBe('tool-post');
  });
});

describe('a cause that is the feed', () => {
  const feedOf = ({ state }: Turn) =>
    figuresNow(state.job, state.snapshot).find(({ id }) => id === 'feed')?.text;

  it('offers the next feed of the card, and the step goes on with it', () => {
    // The card of the example has 0.08, 0.10 and 0.12 mm a rev (flows/machines/metric-lathe.json).
    const offered = hears(cutting, 'poor finish', 'spindle stopped', 'tool locked', 'next', 'next');
    expect(offered.line).toMatch(/Say finer feed, or next\.$/);
    const before = feedOf(offered);
    const finer = hears(offered, 'finer feed');
    expect(finer.line).toMatch(/^Feed zero point \w+( \w+)? millimetres a rev\.$/);
    expect(feedOf(finer)).not.toBe(before);
    const back = hears(finer, 'next', 'next');
    expect(back.at).toBe('face/gate');
    expect(feedOf(back)).toBe(feedOf(finer));
    expect(hears(back, 'feed').line).toContain('a rev');
    expect(finer.entries.at(-1)).toMatchObject({ event: { type: 'feeding' }, outcome: 'moved' });
  });

  it('is offered only as far as the card goes', () => {
    let turn = hears(cutting, 'tool rubs', 'spindle stopped', 'tool locked', 'next', 'tool locked');
    turn = hears(turn, 'next');
    for (let taken = 0; taken < 12; taken++) turn = hears(turn, 'coarser feed');
    expect(feedOf(turn)).toBe('0.32\u00A0mm/rev');
    expect(hears(turn, 'repeat').line).not.toBe('');
    expect(saidNow(turn.state).items.map(({ id }) => id)).not.toContain('offer:0.32');
  });
});
