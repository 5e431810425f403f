/** The answer large, the working under it, the source under that. */

import { useState } from 'preact/hooks';
import {
  baseUnitOf,
  fromBase,
  type Quantity,
  type Rule,
  type RuleAnswer,
  type RuleValue,
  unitsOf,
  type WorkingPart,
} from '../../trade/index.ts';
import { Cautions } from '../frame/Cautions.tsx';
import { AnswerPlot } from './AnswerPlot.tsx';
import { wordsOf } from './question.ts';

interface AnswerProps {
  readonly rule: Rule;
  readonly values: Readonly<Record<string, RuleValue>>;
  readonly answer: Extract<RuleAnswer, { ok: true }>;
}

export function Answer({ rule, values, answer }: AnswerProps) {
  const { quantity, meaning } = rule.output;
  const [unit, setUnit] = useState(baseUnitOf(quantity));
  const units = unitsOf(quantity);
  const { word, working, ruledBy, source, parts = {} } = answer;
  return (
    <div class="answer-card">
      <p class="answer-meaning">{meaning}</p>
      <p class="answer-value">
        <strong>{word ?? sized(answer.value, unit, quantity)}</strong>
        {word === undefined && units.length > 1 && (
          <select
            aria-label="Unit of the answer"
            value={unit}
            onChange={(event) => setUnit(event.currentTarget.value)}
          >
            {units.map((one) => (
              <option key={one}>{one}</option>
            ))}
          </select>
        )}
        {word === undefined && units.length === 1 && unit !== '' && <span> {unit}</span>}
      </p>
      {ruledBy !== undefined && <p class="answer-ruled">{capital(ruledBy)} rules.</p>}
      <Parts parts={parts} />
      <AnswerPlot rule={rule.name} values={values} answer={answer} />
      <div class="answer-behind">
        <p class="answer-working">{working}</p>
        <p class="hint">Formula: {rule.formula}</p>
        <p class="hint">Source: {source ?? rule.source}</p>
      </div>
      <Cautions lines={rule.cautions} />
    </div>
  );
}

function Parts({ parts }: { readonly parts: Readonly<Record<string, WorkingPart>> }) {
  const entries = Object.entries(parts);
  if (entries.length === 0) return null;
  return (
    <dl class="facts answer-parts">
      {entries.map(([name, part]) => (
        <div key={name}>
          <dt title={part.meaning}>{wordsOf(name)}</dt>
          <dd class="figures-text">{partText(part)}</dd>
        </div>
      ))}
    </dl>
  );
}

function partText({ value, quantity }: WorkingPart): string {
  const unit = baseUnitOf(quantity);
  const values = typeof value === 'number' ? [value] : value;
  return `${values.map((one) => sized(one, unit, quantity)).join(', ')} ${unit}`.trim();
}

/** Six figures say more than any machine can set, and no float dust. */
function sized(value: number, unit: string, quantity: Quantity): string {
  return String(Number(fromBase(value, unit, quantity).toPrecision(6)));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
