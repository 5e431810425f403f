import { describe, expect, test } from 'vitest';
import { beginRun, replayRun, saidNow, startJob } from '../../src/bench/index.ts';
import { figuresNow } from '../../src/flow/index.ts';
import {
  begun,
  head,
  heardAs,
  hears,
  shippedJob,
  sources,
  type Turn,
  throughGate,
  toBar,
  toFirstGate,
} from './scripted.ts';

const gate = hears(begun(), ...toBar, ...toFirstGate);
const cutting = hears(gate, ...throughGate, 'spindle running');
const figure = ({ state }: Turn, id: string) =>
  figuresNow(state.job, state.snapshot).find((one) => one.id === id);

describe('another tool or material, said in the middle', () => {
  test('works out again all that depends, says it, and goes into the record', () => {
    const turn = hears(gate, 'carbide');
    expect(turn.line).toBe(
      'Carbide. Speed one thousand two hundred and fifty-five, feed zero point one two millimetres a rev.',
    );
    expect(turn.at).toBe('face/gate');
    expect(turn.entries.at(-1)).toMatchObject({
      event: { type: 'adjust', input: 'tool', value: 'carbide' },
      outcome: 'moved',
    });
    expect(hears(turn, 'speed').line).toBe(
      'One thousand two hundred and fifty-five. The surface speed rules.',
    );
  });

  test('asks for the speed again where another was set', () => {
    const set = hears(gate, 'tool clear', 'speed set');
    expect(set.state.snapshot.context.facts.speed).toBe('set');
    const turn = hears(set, 'stainless');
    expect(turn.state.snapshot.context).toMatchObject({ speedSet: null });
    expect(turn.state.snapshot.context.facts.speed).toBe('unknown');
    expect(turn.line).toContain('Say speed set.');
  });

  test('[SPEED-CHANGED] holds while something turns at a speed that is no longer the right one', () => {
    const turn = hears(cutting, 'brass');
    expect(turn.at).toBe('face/hold');
    expect(turn.line).toContain('Lost: speed. Hold. Stop the spindle.');
  });

  test('is told when it is what it was already, and nothing is kept as changed', () => {
    const turn = hears(gate, 'high speed steel');
    expect(turn.line).toBe('High speed steel already.');
    expect(turn.state.job).toBe(gate.state.job);
  });

  test('is taken back by wrong, with its numbers', () => {
    const turn = hears(gate, 'carbide', 'wrong');
    expect(hears(turn, 'speed').line).toBe('Three hundred. The surface speed rules.');
    expect(turn.state.job.numbers.inputs.tool).toBe('hss');
  });

  test('counts only by its exact words, and an unsure ear asks', () => {
    expect(hears(gate, 'carbine').state.job).toBe(gate.state.job);
    const unsure = hears(gate, heardAs('carbide', { from: 'speech', confidence: 0.3 }));
    expect(unsure.line).toBe('Did you say carbide? Say it again.');
    expect(unsure.state.job).toBe(gate.state.job);
  });

  test('is not understood as such while a number waits for its answer', () => {
    const waiting = hears(begun(), ...toBar, '24.95', 'carbide');
    expect(waiting.state.job.numbers.inputs.tool).toBe('hss');
  });

  test('what a rule refuses changes nothing and is said in its words', () => {
    const job = jobWith((flow) => {
      flow.workings.push({
        id: 'tapping',
        label: 'Tapping',
        rule: 'cutting-speed',
        given: {
          material: { input: 'material' },
          tool: { input: 'tool' },
          operation: { word: 'tap' },
        },
      });
    });
    const turn = hears(runOf(job), 'coated carbide');
    expect(turn.line).toMatch(/^Tapping: The table has no tap speed with coated-carbide/);
    expect(turn.state.job.numbers.inputs.tool).toBe('hss');
    expect(turn.entries.at(-1)).toMatchObject({ event: null, outcome: 'refused' });
  });

  test('coolant is a word only where the flow asks for coolant', () => {
    const said = (turn: Turn) => saidNow(turn.state).items.flatMap((item) => item.phrases);
    expect(said(gate)).not.toContain('no coolant');
    const job = jobWith((flow) => {
      flow.inputs.push({ id: 'coolant', label: 'Coolant', options: ['yes', 'no'], default: 'yes' });
      const [first] = flow.workings;
      if (first) first.given = { ...first.given, coolant: { input: 'coolant' } };
    });
    expect(said(runOf(job))).toContain('no coolant');
    expect(hears(runOf(job), 'no coolant').state.job.numbers.inputs.coolant).toBe('no');
  });
});

describe('the speed that runs', () => {
  test('takes the place of the worked one, and what depends follows', () => {
    const turn = hears(cutting, 'I am running two hundred');
    expect(turn.at).toBe('face/cutting');
    expect(turn.line).toBe(
      'Two hundred, as you run it. Feed stays zero point one millimetres a rev.',
    );
    expect(turn.state.snapshot.context).toMatchObject({ speedSet: 200 });
    expect(turn.state.snapshot.context.facts.speed).toBe('set');
    expect(figure(turn, 'speed')?.text).toBe('200\u00a0rpm');
    expect(figure(turn, 'speed')?.working).toMatch(/^200 rev\/min, as you run it/);
    expect(turn.entries.at(-1)?.event).toEqual({ type: 'running', speed: 200 });
  });

  test('is still asked for where nobody said it is set', () => {
    const turn = hears(gate, 'running 200');
    expect(turn.state.snapshot.context.facts.speed).toBe('unknown');
    expect(hears(turn, 'tool clear', 'speed set').state.snapshot.context.speedSet).toBe(200);
  });

  test.each(['running sixteen hundred and fifty', 'i am running two thousand', 'running 5000'])(
    '"%s" is refused with the owner of the limit',
    (words) => {
      const turn = hears(cutting, words);
      expect(turn.line).toBe("The chuck's mark is one thousand six hundred. Set a lower speed.");
      expect(turn.state.job).toBe(cutting.state.job);
      expect(turn.at).toBe('face/cutting');
    },
  );

  test('far above what is worked out is told once with that figure', () => {
    expect(hears(gate, 'running four hundred').line).toBe(
      'Four hundred, as you run it. Fast for the edge: worked out, it is three hundred. ' +
        'Feed stays zero point one millimetres a rev.',
    );
  });

  test('goes when another tool changes what is worked out, and stays when it does not', () => {
    const turn = hears(gate, 'running 200', 'carbide');
    expect(turn.state.job.numbers.running).toEqual({});
  });

  test('is no word where nothing is turned', () => {
    expect(hears(begun(), 'running 200').line).toBe('Say again.');
  });
});

describe('words that change the numbers', () => {
  test('are of their own kind and never those of a gate, a loss or a move', () => {
    for (const turn of [begun(), gate, cutting]) {
      const { items } = saidNow(turn.state);
      const of = (adjusts: boolean) =>
        items
          .filter((item) => (item.kind === 'adjust') === adjusts)
          .flatMap((item) => item.phrases);
      const others = new Set(of(false));
      expect(of(true).length).toBeGreaterThan(5);
      expect(of(true).filter((phrase) => others.has(phrase))).toEqual([]);
      expect(items.every((item) => (item.adjust === undefined) === (item.kind !== 'adjust'))).toBe(
        true,
      );
      expect(items.some((item) => item.kind === 'adjust' && (!item.strict || item.event))).toBe(
        false,
      );
    }
  });

  test('"spindle running" is the fact, whatever is running', () => {
    const start = hears(gate, ...throughGate);
    expect(hears(start, 'spindle running').at).toBe('face/cutting');
    expect(hears(start, 'running two hundred').at).toBe('face/start');
  });

  test('a run with changes comes back from its entries with the same numbers', () => {
    const turn = hears(gate, 'carbide', 'running 500', 'brass', 'wrong', 'stainless');
    const back = replayRun(shippedJob(), head, turn.entries);
    if (!back.ok) throw new Error(back.fault);
    expect(back.state.job.numbers.inputs).toEqual(turn.state.job.numbers.inputs);
    expect(back.state.job.numbers.running).toEqual(turn.state.job.numbers.running);
    expect(back.state.snapshot.context).toEqual(turn.state.snapshot.context);
  });
});

interface LooseFlow {
  inputs: Record<string, unknown>[];
  workings: { given?: Record<string, unknown>; [key: string]: unknown }[];
}

function jobWith(change: (flow: LooseFlow) => void) {
  const texts = sources();
  const flow = JSON.parse(texts.flow) as LooseFlow;
  change(flow);
  const started = startJob({ ...texts, flow: JSON.stringify(flow) }, {});
  if (!started.ok) throw new Error(started.faults.join('\n'));
  return started.job;
}

function runOf(job: ReturnType<typeof jobWith>): Turn {
  const { state } = beginRun(job, head);
  return { state, at: 'begin/open', line: '', entries: [] };
}
