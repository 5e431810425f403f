/** How hard a tap turns, so that it is not broken. */

import { worded } from '../../texts/index.ts';
import { aChoice, aText } from '../inputs.ts';
import type { Rule } from '../rule.ts';
import { show } from '../show.ts';
import { parseThread } from '../threads/designation.ts';
import { fault, wordOf } from '../values.ts';

const SOURCE =
  "Tap maker's page of formulas (title not kept) with its table of cutting forces; another maker's formula by thread depth comes within a twentieth for M10 in steel";

/** Cutting force of a tap in N/mm² by metal, as the tap maker prints it: thin chips take more than a lathe's. */
export const TAP_FORCES = {
  'unalloyed-steel': 2300,
  'structural-steel': 2500,
  'heat-treated-steel': 2600,
  'tool-steel': 3600,
  'stainless-steel': 3200,
  'aluminium-long-chips': 800,
  'aluminium-short-chips': 680,
  'copper-long-chips': 1100,
  'brass-short-chips': 720,
  'grey-cast-iron': 1250,
  'alloyed-cast-iron': 1600,
  'malleable-iron': 1100,
} as const;

type Metal = keyof typeof TAP_FORCES;

const metals = Object.keys(TAP_FORCES) as readonly Metal[];

/** Torque of a sharp tap in N·m: kc p² d ÷ 8000, in N/mm² and mm. */
export function tapTorque(force: number, pitch: number, diameter: number): number {
  return (force * pitch ** 2 * diameter) / 8000;
}

export const tapTorqueRule: Rule = {
  name: 'tap-torque',
  title: 'Torque of a tap',
  topic: 'drilling',
  inputs: [
    aText('thread', 'M10x1.5', 'the thread as a drawing writes it'),
    aChoice('metal', metals, 'what is tapped'),
  ],
  output: { quantity: 'torque', meaning: 'torque of a sharp tap in a hole of the usual size' },
  formula: 'M = kc p² d ÷ 8000',
  source: SOURCE,
  cautions: [
    'A worn tap, a hole too small or a dry one turns two to three times as hard (common practice, no source); small taps break there.',
    'Start the tap square, use fluid, and turn back to break the chip; a broken tap flies.',
    'On a machine let a clutch or a tapping head slip before the tap breaks, and clamp the work: it turns with the tap.',
  ],
  work: (values) => {
    const thread = parseThread(wordOf(values, 'thread'));
    if ('fault' in thread) return fault(thread.fault);
    const metal = metals.find((one) => one === wordOf(values, 'metal')) ?? 'structural-steel';
    const force = TAP_FORCES[metal];
    const { pitch, major: diameter } = thread;
    const value = tapTorque(force, pitch, diameter);
    return {
      ok: true,
      value,
      working: worded`${force} N/mm² × (${show(pitch)} mm)² × ${show(diameter)} mm ÷ 8000 = ${show(value, 3)} N·m`,
    };
  },
};
