import { describe, expect, test } from 'vitest';
import { readFlowAt, shippedCards, shippedFlows, shippedKinds } from '../../src/cli/flow-files.ts';
import {
  beginJob,
  type Figure,
  type FlowSnapshot,
  figuresNow,
  inputFigures,
  type Job,
  readingFigures,
  viewOf,
  workingFigures,
} from '../../src/flow/index.ts';
import { walkRight } from './right-walk.ts';
import { hingePin, jobOf } from './shipped.ts';

const kinds = shippedKinds();

function flowAt(path: string) {
  const read = readFlowAt(path, kinds);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.flow;
}

/** The walk that goes right, and every step it leaves out, with the readings of its end. */
function everywhere(job: Job): readonly FlowSnapshot[] {
  const right = walkRight(job);
  const readings = right.at(-1)?.context.readings ?? {};
  const visited = new Set(right.flatMap((at) => Object.keys(Object(at.value))));
  const others = [...job.plans.keys()].filter((id) => !visited.has(id));
  const begun = beginJob(job);
  const aside = others.map((id) =>
    job.machine.resolveState({
      value: { [id]: Object.keys(job.machine.states[id]?.states ?? {})[0] ?? '' },
      context: { ...begun.context, readings },
    }),
  );
  return [...right, ...aside];
}

function lacks({ given = [], working, formula, source }: Figure): boolean {
  const put = given.every(({ label, text }) => label !== '' && text !== '');
  return given.length === 0 || !put || !working || !formula || !source;
}

describe.each(shippedFlows())('every figure of %s', (path) => {
  const flow = flowAt(path);
  const cards = shippedCards().filter((card) => card.machineKind === flow.kind.id);

  test.each(cards)(
    'has inputs, formula, working and source on the $id, in every step, in figures and in lines',
    (card) => {
      const job = jobOf(flow, {}, card);
      const places = everywhere(job);
      const steps = new Set(places.map((at) => viewOf(job, at).step.id));
      expect([...job.plans.keys()].filter((id) => !steps.has(id))).toEqual([]);
      const figures = places.flatMap((at) => {
        const { lead, ask } = viewOf(job, at);
        const told = [...(lead.figures ?? []), ...(ask.figures ?? [])];
        return [...figuresNow(job, at), ...readingFigures(job, at), ...told];
      });
      const before = [...inputFigures(job, beginJob(job)), ...workingFigures(job, beginJob(job))];
      expect(figures.length).toBeGreaterThan(steps.size);
      expect([...before, ...figures].filter(lacks)).toEqual([]);
    },
  );

  test('is told in the line it stands in: no figure of a line goes without its "why that"', () => {
    const job = jobOf(flow, {}, cards[0]);
    const lines = everywhere(job).flatMap((at) => {
      const { lead, ask } = viewOf(job, at);
      return [lead, ask];
    });
    const withNumbers = lines.filter(({ shown }) =>
      /\d(?:\s| )?(?:mm|m\/min|rpm|in|deg|°)/.test(shown),
    );
    expect(withNumbers.length).toBeGreaterThan(4);
    const untold = withNumbers.filter(({ figures = [] }) => figures.length === 0);
    expect(untold.map(({ shown }) => shown)).toEqual([]);
  });
});

describe('a figure that is taken, not worked out', () => {
  const job = jobOf(hingePin());
  const at = beginJob(job);

  test('says what was given and what was allowed', () => {
    for (const figure of inputFigures(job, at)) {
      expect(figure.given?.[0]?.text).toBe(figure.text);
      expect(figure.allowed).toBeTruthy();
    }
  });
});
