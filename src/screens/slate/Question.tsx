/** The fields of one rule, and the answer as soon as there is one. */

import { useState } from 'preact/hooks';
import { midSentence, slateTexts } from '../../texts/index.ts';
import type { Rule, RuleValue } from '../../trade/index.ts';
import { addressOf } from '../route.ts';
import { useLanguage, useSay } from '../use-say.ts';
import { Answer } from './Answer.tsx';
import {
  askSlate,
  type FieldText,
  firstTexts,
  type SlateAnswer,
  type Texts,
  wordsOf,
} from './question.ts';
import { RuleField } from './RuleField.tsx';

/** What was typed for a rule is still there when one comes back to it. */
const remembered = new Map<string, Texts>();

interface QuestionProps {
  readonly rule: Rule;
  readonly known: Readonly<Record<string, RuleValue>>;
}

export function Question({ rule, known }: QuestionProps) {
  const say = useSay(slateTexts);
  const language = useLanguage();
  const [texts, setTexts] = useState<Texts>(
    () => remembered.get(rule.name) ?? firstTexts(rule, known, language),
  );
  const result = askSlate(rule, texts, language);
  const faults = result.kind === 'faults' ? result.faults : {};
  const change = (name: string, field: FieldText) => {
    const next = { ...texts, [name]: field };
    remembered.set(rule.name, next);
    setTexts(next);
  };
  return (
    <section class="slate-question" aria-labelledby="question-title">
      <a class="slate-back" href={addressOf({ at: 'slate' })}>
        {say('all')}
      </a>
      <h2 id="question-title">{rule.title}</h2>
      <form class="slate-fields" noValidate onSubmit={(event) => event.preventDefault()}>
        {rule.inputs.map((input) => (
          <RuleField
            key={input.name}
            input={input}
            field={texts[input.name] ?? { text: '', unit: '' }}
            fault={faults[input.name]}
            onField={(field) => change(input.name, field)}
          />
        ))}
      </form>
      <Result rule={rule} result={result} />
    </section>
  );
}

function Result({ rule, result }: { readonly rule: Rule; readonly result: SlateAnswer }) {
  const say = useSay(slateTexts);
  const language = useLanguage();
  const missing = result.kind === 'open' ? result.missing : [];
  const names = rule.inputs.flatMap(({ name, label }) =>
    missing.includes(name) ? [wordsOf(name, label)] : [],
  );
  return (
    <div class="slate-result" aria-live="polite">
      {result.kind === 'answer' && <Answer rule={rule} {...result} />}
      {result.kind === 'open' && (
        <p class="soft">{say('stillToGive', { names: midSentence(language, names.join(', ')) })}</p>
      )}
      {result.kind === 'faults' && (
        <ul class="faults">
          {Object.values(result.faults).map((fault) => (
            <li key={fault}>{fault}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
