/** Large keys for a reading. What is typed is heard like a spoken number: it is read back before it counts. */

import type { BenchList } from '../../bench/index.ts';
import type { Figure } from '../../flow/index.ts';
import { decimalIn, dockTexts, unitIn } from '../../texts/index.ts';
import { AskWhy } from '../frame/AskWhy.tsx';
import { Icon } from '../frame/Icon.tsx';
import { useLanguage, useSay } from '../use-say.ts';

interface NumberPadProps {
  readonly wanted: NonNullable<BenchList['number']>;
  readonly typed: string;
  /** What stands behind the least and the most that is possible. */
  readonly why: readonly Figure[];
  readonly onType: (typed: string) => void;
  readonly onTake: () => void;
  /** The same rules for keys of glass and keys of plastic. */
  readonly onKey: (key: string) => void;
}

const KEYS = ['7', '8', '9', '4', '5', '6', '1', '2', '3'] as const;

export function NumberPad({ wanted, typed, why, onType, onTake, onKey }: NumberPadProps) {
  const text = useSay(dockTexts);
  const language = useLanguage();
  const { unit: id, min, max, decimals, reading } = wanted;
  const unit = unitIn(language, id);
  const show = (value: number) => decimalIn(language, value, decimals);
  const sign = language.spoken?.decimalSign ?? '.';
  return (
    <section class="pad" aria-label={text('pad')}>
      <div class="pad-display">
        <span class="pad-label">{reading.label}</span>
        <output class="pad-typed" aria-live="polite">
          {typed === '' ? <span class="pad-empty">–</span> : typed.replace('.', sign)}
          <span class="pad-unit"> {unit}</span>
        </output>
        <AskWhy figures={why} look="pad-range">
          {text('range', { least: show(min), most: show(max) })} {unit}
        </AskWhy>
      </div>
      <div class="pad-keys">
        {KEYS.map((key) => (
          <PadKey key={key} sign={key} onKey={onKey} />
        ))}
        <PadKey sign="." shown={sign} name={text('point')} onKey={onKey} />
        <PadKey sign="0" onKey={onKey} />
        <button
          type="button"
          class="button pad-key rub"
          aria-label={text('rubOut')}
          onClick={(event) => {
            if (event.detail > 0) event.currentTarget.blur();
            onType(typed.slice(0, -1));
          }}
        >
          <Icon name="rub" />
        </button>
        {min < 0 && <PadKey sign="-" name={text('minus')} onKey={onKey} />}
        {id === 'in' && <PadKey sign="/" name={text('fraction')} onKey={onKey} />}
        <button
          type="button"
          class="button main pad-key pad-take"
          disabled={typed === ''}
          onClick={onTake}
        >
          {text('takeIt')}{' '}
          <span class="key" aria-hidden="true">
            Enter
          </span>
        </button>
      </div>
    </section>
  );
}

interface PadKeyProps {
  readonly sign: string;
  readonly name?: string;
  /** Another sign for the same, such as a comma. */
  readonly shown?: string;
  readonly onKey: (key: string) => void;
}

function PadKey({ sign, shown = sign, name, onKey }: PadKeyProps) {
  return (
    <button
      type="button"
      class="button pad-key"
      aria-label={name}
      onClick={(event) => {
        if (event.detail > 0) event.currentTarget.blur();
        onKey(sign);
      }}
    >
      {shown}
    </button>
  );
}
