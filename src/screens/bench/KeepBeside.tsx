/** What goes into the record beside the job: a typed note, a photo. Behind two buttons, out of the way of the answers. */

import { useEffect, useState } from 'preact/hooks';
import type { RunState } from '../../bench/index.ts';
import { positionOf } from '../../flow/index.ts';
import { recordTexts } from '../../texts/index.ts';
import { later } from '../frame/later.tsx';
import { useSay } from '../use-say.ts';
import type { LiveRun, WorldProps } from '../world.ts';
import { NotePanel } from './NotePanel.tsx';

const Photos = later(async () => (await import('../logbook/Photos.tsx')).Photos);

interface KeepBesideProps extends WorldProps {
  readonly run: LiveRun;
  readonly state: RunState;
}

export function KeepBeside({ world, run, state }: KeepBesideProps) {
  const say = useSay(recordTexts);
  const [open, setOpen] = useState<'note' | 'photos' | null>(null);
  const { noteAsked, head } = state;
  // "Note" said alone asks for the keyboard.
  useEffect(() => {
    if (noteAsked !== undefined) setOpen('note');
  }, [noteAsked]);
  const turn = (name: 'note' | 'photos') => setOpen(open === name ? null : name);
  return (
    <section class="keep-beside" aria-label={say('notes')}>
      <Turn name={say('note')} open={open === 'note'} onTurn={() => turn('note')} />
      <Turn name={say('photos')} open={open === 'photos'} onTurn={() => turn('photos')} />
      {open === 'note' && (
        <NotePanel
          onNote={(text) => {
            run.note(text);
            setOpen(null);
          }}
        />
      )}
      {open === 'photos' && (
        <Photos world={world} runId={head.id} step={positionOf(state.snapshot).step} />
      )}
    </section>
  );
}

interface TurnProps {
  readonly name: string;
  readonly open: boolean;
  readonly onTurn: () => void;
}

function Turn({ name, open, onTurn }: TurnProps) {
  return (
    <button
      type="button"
      class="button say small"
      aria-expanded={open}
      onClick={(event) => {
        // The space bar may be a foot switch: it must not press this button again.
        if (event.detail > 0) event.currentTarget.blur();
        onTurn();
      }}
    >
      <span class="say-word">{name}</span>
      <span aria-hidden="true">{open ? '−' : '+'}</span>
    </button>
  );
}
