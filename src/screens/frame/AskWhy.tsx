/** A line of text with numbers in it, as a button that tells where they come from. */

import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { FigureBehind } from './Behind.tsx';
import { Behind } from './Behind.tsx';

interface AskWhyProps {
  readonly figures: readonly FigureBehind[];
  readonly look: string;
  readonly children: ComponentChildren;
}

/** Without figures it is plain text. */
export function AskWhy({ figures, look, children }: AskWhyProps) {
  const [open, setOpen] = useState(false);
  const panel = useId();
  if (figures.length === 0) return <span class={look}>{children}</span>;
  return (
    <>
      <button
        type="button"
        class={`${look} ask-why`}
        aria-expanded={open}
        aria-controls={open ? panel : undefined}
        onClick={(event) => {
          if (event.detail > 0) event.currentTarget.blur();
          setOpen(!open);
        }}
      >
        {children}
      </button>
      {open && (
        <div id={panel}>
          {figures.map((figure) => (
            <Behind key={figure.label} figure={figure} />
          ))}
        </div>
      )}
    </>
  );
}
