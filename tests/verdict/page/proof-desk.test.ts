import { beforeEach, describe, expect, it } from 'vitest';
import type { ProofJob, ToldProof } from '../../../src/proof/index.ts';
import { ProofDesk, type Prover } from '../../../src/verdict/page/index.ts';
import type { FromProver, ToProver } from '../../../src/verdict/shared/index.ts';

class FakeProver implements Prover {
  onmessage: Prover['onmessage'] = null;
  onerror: Prover['onerror'] = null;
  ended = false;
  readonly asked: ToProver[] = [];
  postMessage(message: ToProver): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.ended = true;
  }
  tells(message: FromProver): void {
    this.onmessage?.(new MessageEvent('message', { data: message }));
  }
}

const job: ProofJob = { flow: '{}', kind: '{}', card: '{}', inputs: { size: 1 } };
const other: ProofJob = { ...job, inputs: { size: 2 } };
const proved: ToldProof = { verdict: 'proved', reason: '', problems: [], states: 7 };

let provers: FakeProver[] = [];
let timers: (() => void)[] = [];
let desk: ProofDesk;

beforeEach(() => {
  provers = [];
  timers = [];
  desk = new ProofDesk({
    limit: 60_000,
    start: () => {
      const prover = new FakeProver();
      provers.push(prover);
      return prover;
    },
    clock: {
      now: () => 0,
      after: (_, call) => {
        timers.push(call);
        return () => {
          timers = timers.filter((one) => one !== call);
        };
      },
    },
  });
});

const last = () => provers.at(-1) ?? new FakeProver();
const done = (proof: ToldProof): FromProver => ({ kind: 'done', result: { ok: true, proof } });

describe('the desk that asks for proofs', () => {
  it('knows nothing of a job before it is asked for', () => {
    expect(desk.state(job)).toBeUndefined();
  });

  it("takes a job with an instructor's release for another than the same without", () => {
    void desk.ask({ ...job, releaseFirst: true });
    expect(desk.state(job)).toBeUndefined();
    expect(last().asked).toEqual([{ kind: 'prove', asked: { ...job, releaseFirst: true } }]);
  });

  it('tells how far the walk is, then the verdict, and ends the worker', async () => {
    const seen: unknown[] = [];
    desk.subscribe(() => seen.push(desk.state(job)));
    const answer = desk.ask(job);
    last().tells({ kind: 'walking', places: 12 });
    last().tells(done(proved));
    expect(await answer).toEqual({ is: 'told', proof: proved });
    expect(seen).toEqual([
      { is: 'walking', places: 0 },
      { is: 'walking', places: 12 },
      { is: 'told', proof: proved },
    ]);
    expect(last().ended).toBe(true);
    expect(timers).toEqual([]);
  });

  it('walks once for one job, however often it is asked', async () => {
    const first = desk.ask(job);
    const second = desk.ask({ ...job });
    last().tells(done(proved));
    expect(await second).toBe(await first);
    expect(await desk.ask(job)).toEqual({ is: 'told', proof: proved });
    expect(provers.length).toBe(1);
  });

  it('ends the walk of one job when another is asked for', async () => {
    const first = desk.ask(job);
    void desk.ask(other);
    expect(await first).toEqual({ is: 'stopped', why: 'other' });
    expect(provers.map(({ ended }) => ended)).toEqual([true, false]);
    expect(desk.state(other)).toEqual({ is: 'walking', places: 0 });
  });

  it('is stopped by the person, and walks again when asked again', async () => {
    const first = desk.ask(job);
    desk.stop();
    expect(await first).toEqual({ is: 'stopped', why: 'person' });
    expect(last().ended).toBe(true);
    void desk.ask(job);
    expect(provers.length).toBe(2);
  });

  it('calls a walk too large that takes longer than its limit', async () => {
    const answer = desk.ask(job);
    for (const call of timers) call();
    const state = await answer;
    expect(state).toMatchObject({ is: 'told', proof: { verdict: 'too-large', reason: '60 s' } });
    expect(last().ended).toBe(true);
  });

  it('proves nothing when the worker breaks down', async () => {
    const answer = desk.ask(job);
    last().tells({ kind: 'failed', reason: 'no memory' });
    expect(await answer).toEqual({ is: 'stopped', why: 'failed' });
    const again = desk.ask(job);
    last().onerror?.(new Event('error') as ErrorEvent);
    expect(await again).toEqual({ is: 'stopped', why: 'failed' });
  });

  it('passes on why there is no job to prove', async () => {
    const answer = desk.ask(job);
    last().tells({ kind: 'done', result: { ok: false, faults: ['The bar is too thin.'] } });
    expect(await answer).toEqual({ is: 'faulty', faults: ['The bar is too thin.'] });
  });
});
