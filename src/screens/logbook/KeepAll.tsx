/** The whole Logbook as one file, out and in; and whether the browser promised to keep it. */

import { useCallback, useRef, useState } from 'preact/hooks';
import { logbookTexts, sentenceOf } from '../../texts/index.ts';
import { useAwaited } from '../use-changes.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { fileName, giveFile } from './give-file.ts';

interface KeepAllProps extends WorldProps {
  readonly onTaken: () => void;
}

export function KeepAll({ world, onTaken }: KeepAllProps) {
  const say = useSay(logbookTexts);
  const language = useLanguage();
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
      setMessage(say('written'));
    } catch (error) {
      setMessage(say('notWritten', { why: sentenceOf(error, language) }));
    }
  }

  async function taken(file: File | undefined): Promise<void> {
    if (!file) return;
    try {
      const result = await world.importAll(await file.text());
      setMessage(result.message);
      if (result.ok) onTaken();
    } catch (error) {
      setMessage(say('notTakenIn', { why: sentenceOf(error, language) }));
    }
  }

  return (
    <section class="card stack" aria-labelledby="keep-title">
      <h2 id="keep-title">{say('keepCopy')}</h2>
      <Promised world={world} />
      <div class="row">
        <button type="button" class="button" onClick={out}>
          {say('writeAll')}
        </button>
        <button type="button" class="button" onClick={() => chooser.current?.click()}>
          {say('takeIn')}
        </button>
        <input
          ref={chooser}
          type="file"
          accept="application/json,.json"
          hidden
          aria-label={say('fileToTakeIn')}
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
  const say = useSay(logbookTexts);
  const promised = useAwaited(
    useCallback(() => world.persistent(), [world]),
    [world],
  );
  const kept = promised.is === 'here' && promised.value === true;
  return <p class="soft">{say(kept ? 'promised' : 'mayClear')}</p>;
}
