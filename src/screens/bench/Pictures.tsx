/** The machine with the part that the step is about, and the piece as far as it has come. */

import { useRef, useState } from 'preact/hooks';
import type { RunState } from '../../bench/index.ts';
import { positionOf, type View } from '../../flow/index.ts';
import { machineTexts, whyTexts } from '../../texts/index.ts';
import { PieceDrawing } from '../drawing/PieceDrawing.tsx';
import { WhyFigures } from '../frame/WhyFigures.tsx';
import { isPictured, MachinePicture } from '../machine/MachinePicture.tsx';
import { type PartNow, partNow } from '../machine/part-now.ts';
import { partWords } from '../machine/part-words.ts';
import { pieceFigures } from '../piece/piece-figures.ts';
import { pieceNow } from '../piece/piece-now.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { Say } from './SayButton.tsx';
import { useWidth } from './use-width.ts';

interface MachineProps {
  readonly say: Say;
  /** Said before the name of a part to ask about it. */
  readonly head: string;
  readonly state: RunState;
  readonly view: View;
}

/** Touching a part asks where it is, as a voice would: it is lit and told. The next move lights its own part again. */
export function Machine({ say, head, state, view }: MachineProps) {
  const text = useSay(machineTexts);
  const language = useLanguage();
  const [shown, setShown] = useState<{ scene: string; part: string } | null>(null);
  const { kind } = state.job.flow;
  if (!isPictured(kind.id)) return null;
  const scene = `${view.step.id} ${view.phase}`;
  // The picture may have a part that the machine kind does not name: that one is told here only.
  const own = state.lit ?? (shown?.scene === scene ? shown.part : undefined);
  const now: PartNow = own === undefined ? partNow(state.job, view) : { part: own };
  const lit = now.part;
  const part = lit === undefined ? undefined : partWords(kind.id, lit, language);
  return (
    <figure class="picture machine">
      <MachinePicture
        kind={kind.id}
        lit={lit}
        direction={now.direction}
        guard={guardOf(state)}
        title={kind.title}
        onPart={(id) => {
          setShown({ scene, part: id });
          const named = kind.parts.find((one) => one.id === id)?.name;
          if (named !== undefined) say(`${head} ${named}`, 'touch');
        }}
      />
      <figcaption aria-live="polite">{part ? part.what : text('touchPart')}</figcaption>
    </figure>
  );
}

function guardOf({ snapshot }: RunState): 'open' | 'closed' {
  return snapshot.context.facts.guard === 'closed' ? 'closed' : 'open';
}

/** The drawing of the piece, as far as the run has come. */
export function Piece({ state }: { readonly state: RunState }) {
  const say = useSay(whyTexts);
  const text = useSay(machineTexts);
  const box = useRef<HTMLElement>(null);
  const width = useWidth(box);
  const { step } = positionOf(state.snapshot);
  const now = pieceNow(state.job, step, state.snapshot.context.readings);
  if (!now) return null;
  return (
    <figure class="picture piece" ref={box}>
      {width > 0 && (
        <PieceDrawing
          {...now}
          width={width}
          textSize={Math.max(15, Math.round(width / 30))}
          title={text('pieceSoFar', { title: state.job.flow.file.title })}
        />
      )}
      <details class="piece-sizes">
        <summary>{say('dimensions')}</summary>
        <WhyFigures label={say('dimensions')} figures={pieceFigures(state.job, state.snapshot)} />
      </details>
    </figure>
  );
}
