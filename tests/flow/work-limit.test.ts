/** The limit that the work itself sets on the speed: stated by a step, kept by what is said, and judged by the proof. */

import { describe, expect, it } from 'vitest';
import {
  adjustJob,
  beginJob,
  compileJob,
  type FlowFile,
  type FlowSnapshot,
  type Job,
  readFlowValue,
  resolveFlow,
} from '../../src/flow/index.ts';
import { prove } from '../../src/proof/index.ts';
import { cardNamed, cut, flowWith, hingePin, jobOf, kinds, smallFlow } from './shipped.ts';

const rpm = (is: number) => ({ is, unit: 'rpm' });

function faultsOf(value: unknown): readonly string[] {
  const plain: unknown = JSON.parse(JSON.stringify(value));
  const read = resolveFlow(readFlowValue('small', plain), kinds);
  return read.ok ? [] : read.faults.map(({ message }) => message);
}

/** The hinge pin with another file, read anew. */
function pinWith(change: (file: FlowFile) => FlowFile): Job {
  const value: unknown = JSON.parse(JSON.stringify(change(hingePin().file)));
  const read = resolveFlow(readFlowValue('pin', value), kinds);
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  const made = compileJob(read.flow, cardNamed('metric-lathe'));
  if (!made.ok) throw new Error(made.faults.join('\n'));
  return made.job;
}

const at = (job: Job, step: string): FlowSnapshot =>
  job.machine.resolveState({ value: { [step]: 'gate' }, context: beginJob(job).context });

describe('the limit of the work', () => {
  it('is a speed', () => {
    const value = flowWith([cut('turn', { workLimit: { is: 300, unit: 'mm' } })]);
    expect(faultsOf(value)).toEqual([
      expect.stringContaining('"mm" is not a unit of spindleSpeed'),
    ]);
  });

  it('[LATHE-WORK-LIMIT] is never passed: a cut above it is broken, one at it is proved', () => {
    const proved = (limit: number) => {
      const ready = { tailstock: 'back' };
      const job = jobOf(smallFlow([cut('turn', { needs: ready, workLimit: rpm(limit) })]));
      return [...new Set(prove(job).problems.map(({ claim }) => claim))];
    };
    // The cut of the small flow turns at 300.
    expect(proved(300)).toEqual([]);
    expect(proved(299)).toEqual(['LATHE-WORK-LIMIT']);
  });

  it('of the hinge pin stands at every cut of the bar that is held at one end', () => {
    const stated = hingePin().file.steps.filter((step) => 'workLimit' in step && step.workLimit);
    expect(stated.map(({ id }) => id)).toEqual([
      'face',
      'touch',
      'turn-shank',
      'chamfer',
      'centre-drill',
      'drill',
      'drill-again',
      'touch-again',
      'turn-again',
    ]);
  });

  it('of the hinge pin is worked out from the whole blank at the diameter of the shank', () => {
    const job = jobOf(hingePin());
    // 60 ÷ 2π × 3.516 × √(E I ÷ ρ A) ÷ L², and a third of it: the formula of a beam held at one end; L 73, D 16,
    // steel E 207 000 N/mm², ρ 7850 kg/m³. From memory: any handbook of vibration.
    const whirl =
      ((30 / Math.PI) * 3.516 * Math.sqrt((2.07e11 / 7850) * (0.016 ** 2 / 16))) / 0.073 ** 2;
    const limit = job.numbers.number({ working: 'barLimit' }, {}) ?? 0;
    // Steels are given 200 to 210 kN/mm².
    expect(Math.abs(limit / (whirl / 3) - 1)).toBeLessThan(0.03);
  });

  it('[LATHE-WORK-LIMIT] of the hinge pin breaks the proof where the speed is set past it', () => {
    const slow = pinWith((file) => ({
      ...file,
      steps: file.steps.map((step) =>
        step.id === 'face' ? { ...step, workLimit: rpm(200) } : step,
      ),
    }));
    const problems = prove(slow).problems.map(({ claim, step }) => `${claim} ${step}`);
    expect(problems).toEqual(['LATHE-WORK-LIMIT face']);
  });

  it('rules the speed that is worked out, where it is the lowest', () => {
    const slow = pinWith((file) => ({
      ...file,
      workings: file.workings.map((working) =>
        working.id === 'turnSpeed'
          ? { ...working, given: { ...working.given, workLimit: rpm(200) } }
          : working,
      ),
    }));
    expect(slow.numbers.number({ working: 'turnSpeed' }, {})).toBe(190);
  });

  it('refuses a running speed above it, also where only another step of that speed states it', () => {
    const slow = pinWith((file) => ({
      ...file,
      steps: file.steps.map((step) =>
        step.id === 'touch' ? { ...step, workLimit: rpm(400) } : step,
      ),
    }));
    const run = (speed: number) => adjustJob(slow, at(slow, 'chamfer'), { type: 'running', speed });
    expect(run(300).ok).toBe(true);
    expect(run(460)).toMatchObject({
      ok: false,
      fault: expect.stringContaining("The work's limit is four hundred"),
    });
  });
});
