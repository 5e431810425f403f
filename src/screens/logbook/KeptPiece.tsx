/** The drawing of a kept run's piece: as a figure on the page, as a whole sheet on paper. */

import { useRef } from 'preact/hooks';
import type { RunHead, RunState } from '../../bench/index.ts';
import { logbookTexts, whyTexts } from '../../texts/index.ts';
import { useWidth } from '../bench/use-width.ts';
import { PieceDrawing } from '../drawing/PieceDrawing.tsx';
import { PieceSheet } from '../drawing/PieceSheet.tsx';
import { WhyFigures } from '../frame/WhyFigures.tsx';
import { pieceFigures } from '../piece/piece-figures.ts';
import { useLanguage, useSay } from '../use-say.ts';
import { pieceOfRun, sheetHeadOf } from './sheet-of.ts';

interface KeptPieceProps {
  readonly state: RunState;
  readonly head: RunHead;
}

export function KeptPiece({ state, head }: KeptPieceProps) {
  const say = useSay(whyTexts);
  const word = useSay(logbookTexts);
  const language = useLanguage();
  const box = useRef<HTMLElement>(null);
  const width = useWidth(box);
  const now = pieceOfRun(state);
  if (!now) return null;
  return (
    <section class="stack" aria-labelledby="kept-piece">
      <h2 id="kept-piece" class="no-print">
        {word('thePiece')}
      </h2>
      <figure class="card kept-drawing no-print" ref={box}>
        {width > 0 && (
          <PieceDrawing
            {...now}
            width={Math.min(width, 900)}
            textSize={width < 480 ? 14 : 18}
            title={head.flowTitle}
          />
        )}
      </figure>
      <details class="no-print">
        <summary>{say('dimensions')}</summary>
        <WhyFigures label={say('dimensions')} figures={pieceFigures(state.job, state.snapshot)} />
      </details>
      <div class="print-only">
        <PieceSheet {...now} head={sheetHeadOf(state, head, language)} />
      </div>
    </section>
  );
}
