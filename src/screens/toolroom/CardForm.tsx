/** A machine card filled in from the plate of the machine. Faults stand beside their fields while one writes. */

import { shopTexts } from '../../texts/index.ts';
import { useLanguage, useSay } from '../use-say.ts';
import { type CardTexts, cardFaults, cardMeasures } from './card-draft.ts';
import { PickField, TextField } from './FormField.tsx';

interface CardFormProps {
  readonly text: string;
  readonly texts: CardTexts;
  /** Machine kinds that there are flows for: id and title. */
  readonly kinds: readonly (readonly [id: string, title: string])[];
  readonly onTexts: (texts: CardTexts) => void;
}

type FieldOf = (key: string) => {
  readonly value: string;
  readonly fault: string | undefined;
  readonly onValue: (value: string) => void;
};

/** What is typed stands as it was typed; the card's text follows it. */
export function CardForm({ text, texts, kinds, onTexts }: CardFormProps) {
  const say = useSay(shopTexts);
  const { fields, others } = cardFaults(text, texts, useLanguage());
  const field: FieldOf = (key) => ({
    value: texts[key] ?? '',
    fault: fields[key],
    onValue: (value: string) => onTexts({ ...texts, [key]: value }),
  });
  return (
    <div class="stack">
      <div class="form-grid">
        <WhatMachine kinds={kinds} field={field} />
        <TextField
          label={say('cardSpeeds')}
          hint={say('cardSpeedsHint')}
          lines={2}
          {...field('speeds')}
        />
        <TextField
          label={say('cardFeeds')}
          hint={say('cardFeedsHint')}
          lines={2}
          {...field('feeds')}
        />
        <PickField
          label={say('crossReads')}
          options={[
            ['', say('notKnown')],
            ['diameter', say('diameter')],
            ['radius', say('radius')],
          ]}
          {...field('crossReads')}
        />
        {cardMeasures.map(({ key, example }) => (
          <TextField
            key={key}
            label={say(key)}
            hint={say('example', { example })}
            {...field(key)}
          />
        ))}
        <TextField
          label={say('efficiency')}
          hint={say('efficiencyHint')}
          numeric
          {...field('efficiency')}
        />
        <TextField label={say('notes')} lines={2} {...field('notes')} />
      </div>
      {others.length > 0 && (
        <ul class="faults">
          {others.map((fault) => (
            <li key={fault}>{fault}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

function WhatMachine({ kinds, field }: Pick<CardFormProps, 'kinds'> & { readonly field: FieldOf }) {
  const say = useSay(shopTexts);
  return (
    <>
      <TextField label={say('cardTitle')} {...field('title')} />
      <PickField label={say('cardKind')} options={kinds} {...field('machineKind')} />
      <PickField
        label={say('cardUnits')}
        options={[
          ['metric', say('metric')],
          ['inch', say('inch')],
        ]}
        {...field('units')}
      />
    </>
  );
}
