/** Figures in a row of buttons: each tells where it comes from when it is touched. */

import { useId, useState } from 'preact/hooks';
import type { Figure } from '../../flow/index.ts';
import { Behind } from './Behind.tsx';

interface WhyFiguresProps {
  readonly figures: readonly Figure[];
  /** The name of the list for those who do not see it. */
  readonly label: string;
}

export function WhyFigures({ figures, label }: WhyFiguresProps) {
  const [asked, setAsked] = useState<string | null>(null);
  const panel = useId();
  const open = figures.find((figure) => figure.id === asked);
  return (
    <>
      <ul class="why-figures" aria-label={label}>
        {figures.map((figure) => (
          <li key={figure.id}>
            <button
              type="button"
              class="figure tells"
              aria-expanded={figure === open}
              aria-controls={figure === open ? panel : undefined}
              onClick={() => setAsked(figure === open ? null : figure.id)}
            >
              <span class="figure-label">{figure.label}</span>
              <span class="figure-number">{figure.text}</span>
            </button>
          </li>
        ))}
      </ul>
      {open && <Behind figure={open} id={panel} />}
    </>
  );
}
