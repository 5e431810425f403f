/** Measuring a screw thread over three wires. */

import { type Worded, worded } from '../../texts/index.ts';
import { aLength } from '../inputs.ts';
import { lengthPart } from '../part.ts';
import type { Rule, RuleValues, Worked } from '../rule.ts';
import { show } from '../show.ts';
import { fault, numberIf, numberOf, wordOf } from '../values.ts';
import { parseThread } from './designation.ts';
import { profileOf, TRIANGLE, threadInput } from './profile.ts';
import { limitsOfThread } from './thread-limits.ts';

const CAUTION = 'Stop the spindle before wires and micrometer come near the work.';

/** Wire that touches the flanks at the pitch line: P ÷ (2 cos 30°). */
export const bestWireOf = (pitch: number) => pitch / (2 * TRIANGLE);

/** mm over three wires of a 60° thread. */
export const overWires = (pitchDiameter: number, wire: number, pitch: number) =>
  pitchDiameter + 3 * wire - TRIANGLE * pitch;

/** Wires that stand clear of the crests and do not fall to the root: 0.505 P to 1.010 P. */
function wireFault(wire: number, pitch: number): Worded | undefined {
  const [least, most] = [0.505 * pitch, 1.01 * pitch];
  if (wire >= least && wire <= most) return undefined;
  const where = wire < least ? 'sinks below the crests' : 'does not reach the flanks';
  return worded`A ${show(wire)} mm wire ${where} of a ${show(pitch, 4)} mm pitch; take one from ${show(least, 4)} to ${show(most, 4)} mm, best ${show(bestWireOf(pitch), 4)}.`;
}

function workBest(values: RuleValues): Worked {
  const thread = parseThread(wordOf(values, 'thread'));
  if ('fault' in thread) return fault(thread.fault);
  const { pitch } = thread;
  const best = bestWireOf(pitch);
  return {
    ok: true,
    value: best,
    working: worded`${thread.name}: ${show(pitch, 6)} ÷ (2 cos 30°) = ${show(best, 5)} mm; usable 0.505 P to 1.01 P: ${show(0.505 * pitch, 4)} to ${show(1.01 * pitch, 4)} mm`,
    parts: {
      least: lengthPart(0.505 * pitch, 'thinnest wire that can be used'),
      most: lengthPart(1.01 * pitch, 'thickest wire that can be used'),
    },
  };
}

export const bestWire: Rule = {
  name: 'best-wire',
  title: 'Best wire for a thread',
  topic: 'threads',
  inputs: [threadInput],
  output: {
    quantity: 'length',
    meaning: 'diameter of the best wire',
    parts: { least: 'length', most: 'length' },
  },
  formula: 'w = P ÷ (2 cos 30°) = 0.57735 P',
  source:
    "three-wire sheet (NEME-S); range from memory: Machinery's Handbook; the sheet keeps to 0.56 P to 0.90 P",
  cautions: [CAUTION],
  work: workBest,
};

function workOver(values: RuleValues): Worked {
  const thread = parseThread(wordOf(values, 'thread'));
  if ('fault' in thread) return fault(thread.fault);
  const wire = numberIf(values, 'wire') ?? bestWireOf(thread.pitch);
  const wrong = wireFault(wire, thread.pitch);
  if (wrong !== undefined) return fault(wrong);
  const basic = numberIf(values, 'pitchDiameter') ?? profileOf(thread).pitchDiameter;
  const size = overWires(basic, wire, thread.pitch);
  const limits = limitsOfThread(thread, 'external');
  const over = (pitchDiameter: number) => overWires(pitchDiameter, wire, thread.pitch);
  return {
    ok: true,
    value: size,
    working: worded`${thread.name}: ${show(basic, 6)} + 3 × ${show(wire, 5)} − 0.86603 × ${show(thread.pitch, 6)} = ${show(size, 6)} mm`,
    ...('fault' in limits
      ? {}
      : {
          parts: {
            least: lengthPart(
              over(limits.pitchMin),
              worded`smallest over wires, ${limits.className}`,
            ),
            most: lengthPart(
              over(limits.pitchMax),
              worded`largest over wires, ${limits.className}`,
            ),
          },
        }),
  };
}

const wireInput = aLength('wire', 10, 'wire diameter; the best one when not given', {
  optional: true,
});

export const sizeOverWires: Rule = {
  name: 'size-over-wires',
  title: 'Size over three wires',
  topic: 'threads',
  inputs: [
    threadInput,
    wireInput,
    aLength('pitchDiameter', 300, 'pitch diameter; the basic one when not given', {
      optional: true,
    }),
  ],
  output: { quantity: 'length', meaning: 'micrometer reading over the wires' },
  formula:
    'M = d2 + 3 w − 0.86603 P; lead angle and contact force left out (under 3 µm, M6 to M24)',
  source: "three-wire sheet (NEME-S); constants Machinery's Handbook 31 p. 2129",
  cautions: [CAUTION],
  work: workOver,
};

function judged(pitchDiameter: number, low: number, high: number): string {
  if (pitchDiameter > high) return 'rework';
  return pitchDiameter < low ? 'lost' : 'within';
}

function workBack(values: RuleValues): Worked {
  const thread = parseThread(wordOf(values, 'thread'));
  if ('fault' in thread) return fault(thread.fault);
  const wire = numberIf(values, 'wire') ?? bestWireOf(thread.pitch);
  const wrong = wireFault(wire, thread.pitch);
  if (wrong !== undefined) return fault(wrong);
  const reading = numberOf(values, 'reading');
  const value = reading - 3 * wire + TRIANGLE * thread.pitch;
  const limits = limitsOfThread(thread, 'external');
  const sum = worded`${thread.name}: ${show(reading, 6)} − 3 × ${show(wire, 5)} + 0.86603 × ${show(thread.pitch, 6)} = ${show(value, 6)} mm`;
  if ('fault' in limits) return { ok: true, value, working: sum };
  const { pitchMin, pitchMax, className } = limits;
  const word = judged(value, pitchMin, pitchMax);
  return {
    ok: true,
    value,
    word,
    working: worded`${sum}; ${className} allows ${show(pitchMin, 6)} to ${show(pitchMax, 6)}: ${word}`,
  };
}

export const pitchDiameterOverWires: Rule = {
  name: 'pitch-diameter-over-wires',
  title: 'Pitch diameter from a reading over wires',
  topic: 'threads',
  inputs: [threadInput, aLength('reading', 320, 'micrometer reading over the wires'), wireInput],
  output: { quantity: 'length', meaning: 'pitch diameter' },
  formula: 'd2 = M − 3 w + 0.86603 P',
  source: 'three-wire sheet (NEME-S)',
  cautions: [CAUTION],
  work: workBack,
};
