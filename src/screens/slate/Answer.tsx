/** The answer large, the working under it, the source under that. */

import { useState } from 'preact/hooks';
import { figureIn, type Language, slateTexts, unitIn, whyTexts } from '../../texts/index.ts';
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
import { useLanguage, useSay } from '../use-say.ts';
import { AnswerPlot } from './AnswerPlot.tsx';
import { wordsOf } from './question.ts';

interface AnswerProps {
  readonly rule: Rule;
  readonly values: Readonly<Record<string, RuleValue>>;
  readonly answer: Extract<RuleAnswer, { ok: true }>;
}

export function Answer({ rule, values, answer }: AnswerProps) {
  const say = useSay(slateTexts);
  const why = useSay(whyTexts);
  const language = useLanguage();
  const { quantity, meaning } = rule.output;
  const [unit, setUnit] = useState(baseUnitOf(quantity));
  const units = unitsOf(quantity);
  const { word, wordShown, working, ruledBy, source, parts = {} } = answer;
  return (
    <div class="answer-card">
      <p class="answer-meaning">{meaning}</p>
      <p class="answer-value">
        <strong>{wordShown ?? word ?? sized(answer.value, unit, quantity, language)}</strong>
        {word === undefined && units.length > 1 && (
          <select
            aria-label={say('unitOfAnswer')}
            value={unit}
            onChange={(event) => setUnit(event.currentTarget.value)}
          >
            {units.map((one) => (
              <option key={one} value={one}>
                {unitIn(language, one)}
              </option>
            ))}
          </select>
        )}
        {word === undefined && units.length === 1 && unit !== '' && (
          <span> {unitIn(language, unit)}</span>
        )}
      </p>
      {ruledBy !== undefined && (
        <p class="answer-ruled">{say('rules', { limit: capital(ruledBy) })}</p>
      )}
      <Parts parts={parts} />
      <AnswerPlot rule={rule.name} values={values} answer={answer} />
      <div class="answer-behind">
        <p class="answer-working">{working}</p>
        <p class="hint">{why('formula', { formula: rule.formula })}</p>
        <p class="hint">{why('source', { source: source ?? rule.source })}</p>
      </div>
      <Cautions lines={rule.cautions} />
    </div>
  );
}

function Parts({ parts }: { readonly parts: Readonly<Record<string, WorkingPart>> }) {
  const language = useLanguage();
  const entries = Object.entries(parts);
  if (entries.length === 0) return null;
  return (
    <dl class="facts answer-parts">
      {entries.map(([name, part]) => (
        <div key={name}>
          <dt title={part.meaning}>{wordsOf(name, part.label)}</dt>
          <dd class="figures-text">{partText(part, language)}</dd>
        </div>
      ))}
    </dl>
  );
}

function partText({ value, quantity }: WorkingPart, language: Language): string {
  const unit = baseUnitOf(quantity);
  const values = typeof value === 'number' ? [value] : value;
  const all = values.map((one) => sized(one, unit, quantity, language));
  return `${all.join(language.spoken ? '; ' : ', ')} ${unitIn(language, unit)}`.trim();
}

/** Six figures say more than any machine can set, and no float dust. */
function sized(value: number, unit: string, quantity: Quantity, language: Language): string {
  return figureIn(language, String(Number(fromBase(value, unit, quantity).toPrecision(6))));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
