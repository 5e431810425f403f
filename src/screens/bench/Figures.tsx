/** The numbers that matter now, large; the working under each, and where it comes from when it is touched. */

import type { Figure, View } from '../../flow/index.ts';
import { whyTexts } from '../../texts/index.ts';
import { Behind } from '../frame/Behind.tsx';
import { useSay } from '../use-say.ts';
import { allFigures, inOrder, numberAndUnit, shortWorking } from './figures-order.ts';

interface FiguresProps {
  readonly view: View;
  /** The id of the figure that is asked "why that?". */
  readonly asked: string | null;
  readonly onAsk: (id: string | null) => void;
}

export function Figures({ view, asked, onAsk }: FiguresProps) {
  const say = useSay(whyTexts);
  const figures = allFigures(view);
  if (figures.length === 0) return null;
  const { large, small } = inOrder(figures, view.phase);
  const open = figures.find((figure) => figure.id === asked);
  const toggle = (id: string) => onAsk(id === asked ? null : id);
  return (
    <section class="figures" aria-label={say('figures')}>
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
