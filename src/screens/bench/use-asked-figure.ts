/** Which figure's "why that?" is open: touched, asked for with the key, or said. It closes with its step. */

import { useState } from 'preact/hooks';
import { figureAsked, type RunState } from '../../bench/index.ts';
import type { View } from '../../flow/index.ts';

export interface AskedFigure {
  readonly asked: string | null;
  readonly onAsk: (id: string | null) => void;
  /** Every word that goes out by button or key: "why that" opens what it is about. */
  readonly said: (word: string) => void;
}

export function useAskedFigure({ told }: RunState, view: View): AskedFigure {
  const [open, setOpen] = useState<{ step: string; id: string } | null>(null);
  const step = view.step.id;
  const onAsk = (id: string | null) => setOpen(id === null ? null : { step, id });
  return {
    asked: open?.step === step ? open.id : null,
    onAsk,
    said(word) {
      if (word !== 'why that') return;
      const last = told && 'figure' in told ? told.figure : undefined;
      onAsk(figureAsked(view, last)?.id ?? null);
    },
  };
}
