/** The whole Logbook as one file, out and in; and whether the browser promised to keep it. */

import { useCallback, useRef, useState } from 'preact/hooks';
import { sentenceOf, useAwaited } from '../use-changes.ts';
import type { WorldProps } from '../world.ts';
import { fileName, giveFile } from './give-file.ts';

interface KeepAllProps extends WorldProps {
  readonly onTaken: () => void;
}

export function KeepAll({ world, onTaken }: KeepAllProps) {
  const [message, setMessage] = useState('');
  const chooser = useRef<HTMLInputElement>(null);

  async function out(): Promise<void> {
    try {
      const day = new Date().toISOString().slice(0, 10);
      giveFile(
        fileName(['followrest', 'logbook', day], 'json'),
        'application/json',
        await world.exportAll(),
      );
      setMessage('Written to a file.');
    } catch (error) {
      setMessage(`Not written: ${sentenceOf(error)}`);
    }
  }

  async function taken(file: File | undefined): Promise<void> {
    if (!file) return;
    try {
      const result = await world.importAll(await file.text());
      setMessage(result.message);
      if (result.ok) onTaken();
    } catch (error) {
      setMessage(`Not taken in, nothing is changed: ${sentenceOf(error)}`);
    }
  }

  return (
    <section class="card stack" aria-labelledby="keep-title">
      <h2 id="keep-title">Keep a copy</h2>
      <Promised world={world} />
      <div class="row">
        <button type="button" class="button" onClick={out}>
          Write all to a file
        </button>
        <button type="button" class="button" onClick={() => chooser.current?.click()}>
          Take in a file
        </button>
        <input
          ref={chooser}
          type="file"
          accept="application/json,.json"
          hidden
          aria-label="File to take in"
          onChange={(event) => {
            void taken(event.currentTarget.files?.[0]);
            event.currentTarget.value = '';
          }}
        />
      </div>
      <p role="status">{message}</p>
    </section>
  );
}

function Promised({ world }: WorldProps) {
  const promised = useAwaited(
    useCallback(() => world.persistent(), [world]),
    [world],
  );
  const kept = promised.is === 'here' && promised.value === true;
  return (
    <p class="soft">
      {kept
        ? 'This browser has promised to keep the Logbook on this device.'
        : 'The Logbook is on this device only, and the browser may clear it when space runs out. Keep a copy elsewhere.'}
    </p>
  );
}
