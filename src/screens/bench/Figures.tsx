/** The numbers that matter now, large; the working under each, and where it comes from when it is touched. */

import { useState } from 'preact/hooks';
import type { Figure, View } from '../../flow/index.ts';
import { inOrder, numberAndUnit, shortWorking } from './figures-order.ts';

export function Figures({ view }: { readonly view: View }) {
  const [asked, setAsked] = useState<string | null>(null);
  if (view.figures.length === 0) return null;
  const { large, small } = inOrder(view.figures, view.phase);
  const open = view.figures.find((figure) => figure.id === asked && figure.working);
  const toggle = (id: string) => setAsked(id === asked ? null : id);
  return (
    <section class="figures" aria-label="Figures">
      <ul class="figures-large" data-count={large.length}>
        {large.map((figure) => (
          <li key={figure.id}>
            <FigureCard figure={figure} open={figure.id === open?.id} onAsk={toggle} large />
          </li>
        ))}
      </ul>
      {small.length > 0 && (
        <ul class="figures-small">
          {small.map((figure) => (
            <li key={figure.id}>
              <FigureCard figure={figure} open={figure.id === open?.id} onAsk={toggle} />
            </li>
          ))}
        </ul>
      )}
      {open && <Behind figure={open} />}
    </section>
  );
}

interface FigureCardProps {
  readonly figure: Figure;
  readonly open: boolean;
  readonly onAsk: (id: string) => void;
  readonly large?: boolean;
}

function FigureCard({ figure, open, onAsk, large = false }: FigureCardProps) {
  const { id, label, text, working } = figure;
  const { number, unit } = numberAndUnit(text);
  const inside = (
    <>
      <span class="figure-label">{label}</span>
      <span class="figure-value">
        <span class="figure-number">{number}</span>
        {unit !== '' && (
          <>
            {' '}
            <span class="figure-unit">{unit}</span>
          </>
        )}
      </span>
      {large && working !== undefined && (
        <span class="figure-working">{shortWorking(working)}</span>
      )}
    </>
  );
  const look = large ? 'figure large' : 'figure';
  if (working === undefined) return <div class={look}>{inside}</div>;
  return (
    <button
      type="button"
      class={`${look} tells`}
      aria-expanded={open}
      onClick={(event) => {
        if (event.detail > 0) event.currentTarget.blur();
        onAsk(id);
      }}
    >
      {inside}
    </button>
  );
}

/** The whole working, the limit that rules, and the source. */
function Behind({ figure }: { readonly figure: Figure }) {
  const { label, working = '', given = [], formula, ruledBy, source } = figure;
  return (
    <div class="behind">
      <h2>{label}: why that?</h2>
      {given.length > 0 && (
        <p>From {given.map((one) => `${one.label.toLowerCase()} ${one.text}`).join('; ')}.</p>
      )}
      <ol>
        {working.split('; ').map((part) => (
          <li key={part}>{part}</li>
        ))}
      </ol>
      {ruledBy !== undefined && (
        <p>
          <strong>{ruledBy.charAt(0).toUpperCase() + ruledBy.slice(1)} rules.</strong>
        </p>
      )}
      {formula !== undefined && <p class="hint">Formula: {formula}</p>}
      {source !== undefined && <p class="hint">Source: {source}</p>}
    </div>
  );
}
