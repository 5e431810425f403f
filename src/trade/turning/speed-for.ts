/** The question asked most: which speed for this diameter of this material with this tool. */

import { worded } from '../../texts/index.ts';
import { cuttingSpeed } from '../materials/cutting-speed.ts';
import {
  coolantInput,
  materialInput,
  operationInput,
  questionOf,
  toolInput,
} from '../materials/inputs.ts';
import { materialNamed } from '../materials/named.ts';
import type { Rule } from '../rule.ts';
import { numberOf, wordOf } from '../values.ts';
import { cardSpeed, looseCardInputs } from './card-speed.ts';
import { diameterInput } from './spindle-speed.ts';

export const speedForMaterialRule: Rule = {
  name: 'speed-for-material',
  title: 'Spindle speed for a material, tool and diameter',
  topic: 'speeds and feeds',
  inputs: [
    materialInput,
    { ...operationInput, default: 'turn' },
    toolInput,
    coolantInput,
    diameterInput,
    ...looseCardInputs,
  ],
  output: {
    quantity: 'spindleSpeed',
    meaning: 'speed to set; without a card, the ideal speed below every limit given',
    parts: { ideal: 'spindleSpeed', surfaceSpeed: 'surfaceSpeed' },
  },
  formula: 'cutting speed of the table, 1000 v ÷ (π D), next lower on the card',
  source:
    'Materials table (a source in every row); Groover, Fundamentals of Modern Manufacturing 4e',
  cautions: ['The lowest of the marks on chuck, card and work comes first.'],
  work: (values) => {
    const material = materialNamed(wordOf(values, 'material'));
    const speed = cuttingSpeed(material, questionOf(values, wordOf(values, 'operation')));
    if (!speed.ok) return speed;
    const answer = cardSpeed(speed.value, numberOf(values, 'diameter'), values);
    if (!answer.ok) return answer;
    const source = speed.source === undefined ? {} : { source: speed.source };
    return { ...answer, ...source, working: worded`${speed.working}; ${answer.working}` };
  },
};
