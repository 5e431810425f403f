/** A shop's own material, filled in. Every fault stands beside its field once it was to be kept. */

import { useState } from 'preact/hooks';
import { shopTexts } from '../../texts/index.ts';
import { type Material, shopRanges } from '../../trade/index.ts';
import { FocusHeading } from '../frame/FocusHeading.tsx';
import { NotYet } from '../frame/NotYet.tsx';
import { useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { PickField, TextField } from './FormField.tsx';
import {
  columns,
  type FieldFaults,
  groups,
  type MaterialTexts,
  numberFields,
  readMaterialDraft,
  textsOf,
  toolColumns,
} from './material-draft.ts';
import { useKeeping } from './use-keeping.ts';

interface MaterialFormProps extends WorldProps {
  /** The row the form begins from. */
  readonly like: Material;
  /** True when that row itself is changed; else a new one is made. */
  readonly changing: boolean;
  readonly taken: readonly string[];
  readonly onClose: () => void;
}

export function MaterialForm(props: MaterialFormProps) {
  const say = useSay(shopTexts);
  const form = useMaterialForm(props);
  const { texts, faults, refused, change } = form;
  const field = (key: string) => ({
    value: texts[key] ?? '',
    fault: faults[key],
    onValue: (value: string) => change(key, value),
  });
  const yesNo = [['no', say('no')] as const, ['yes', say('yes')] as const];
  return (
    <form class="stack" noValidate onSubmit={form.keep} aria-labelledby="material-form">
      <FocusHeading id="material-form" takes>
        {say('materialForm')}
      </FocusHeading>
      <NotYet reasons={[...Object.values(faults), ...refused]} heading="h3" />
      <div class="form-grid">
        <TextField label={say('title')} hint={say('titleHint')} {...field('title')} />
        <PickField
          label={say('iso')}
          hint={say('isoHint')}
          options={groups.map((one) => [one, one] as const)}
          {...field('iso')}
        />
        {numberFields.map(({ key, unit }) => (
          <TextField
            key={key}
            label={say(key)}
            hint={rangeText(say, key, unit)}
            numeric
            {...{ unit }}
            {...field(key)}
          />
        ))}
        <PickField label={say('cutDry')} options={yesNo} {...field('cutDry')} />
        <TextField label={say('source')} hint={say('sourceHint')} {...field('source')} />
      </div>
      <SpeedsOfMaterial field={field} />
      <p class="row">
        <button type="submit" class="button main tall">
          {say('keepMaterial')}
        </button>
        <button type="button" class="button tall" onClick={props.onClose}>
          {say('leave')}
        </button>
      </p>
    </form>
  );
}

interface SpeedsProps {
  readonly field: (key: string) => {
    readonly value: string;
    readonly fault: string | undefined;
    readonly onValue: (value: string) => void;
  };
}

function SpeedsOfMaterial({ field }: SpeedsProps) {
  const say = useSay(shopTexts);
  return (
    <fieldset class="stack">
      <legend>
        <h3>{say('speeds')}</h3>
      </legend>
      <p class="hint">{say('speedsHint')}</p>
      <div class="form-grid speeds">
        {columns.flatMap((column) =>
          toolColumns.map((tool) => (
            <TextField
              key={`${column}.${tool}`}
              label={say('speedOf', { operation: say(column), tool: say(tool) })}
              numeric
              {...field(`${column}.${tool}`)}
            />
          )),
        )}
      </div>
    </fieldset>
  );
}

function rangeText(
  say: ReturnType<typeof useSay<typeof shopTexts>>,
  key: keyof typeof shopRanges,
  unit: string,
): string {
  const [low, high] = shopRanges[key];
  const range = say('range', { low, high, unit }).trim();
  return key === 'kc' || key === 'mc' ? `${range}; ${say('forceHint')}` : range;
}

/** What was typed, what is wrong with it, and the way to keep it. */
function useMaterialForm({ world, like, changing, taken, onClose }: MaterialFormProps) {
  const say = useSay(shopTexts);
  const [texts, setTexts] = useState<MaterialTexts>(() => textsOf(like, changing));
  const [tried, setTried] = useState(false);
  const { refused, keepBy } = useKeeping(onClose);
  const read = readMaterialDraft(texts, say, taken, changing ? like.name : undefined);
  const faults: FieldFaults = tried && !read.ok ? read.faults : {};

  async function keep(event: Event): Promise<void> {
    event.preventDefault();
    setTried(true);
    if (!read.ok) return;
    await keepBy(() => world.materials.keep(read.row));
  }

  return {
    texts,
    faults,
    refused,
    keep,
    change: (key: string, value: string) => setTexts({ ...texts, [key]: value }),
  };
}
