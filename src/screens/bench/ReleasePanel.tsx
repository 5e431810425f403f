/** Where the step waits for an instructor: who it is, and the passphrase. Never spoken, and no key of the Bench. */

import { useState } from 'preact/hooks';
import { peopleTexts } from '../../texts/index.ts';
import { SecretField } from '../people/SecretField.tsx';
import { useSay } from '../use-say.ts';
import type { Credential, Operator } from '../world.ts';

interface ReleasePanelProps {
  readonly operators: readonly Operator[];
  readonly onRelease: (by: Credential) => Promise<string | null>;
}

export function ReleasePanel({ operators, onRelease }: ReleasePanelProps) {
  const say = useSay(peopleTexts);
  const instructors = operators.filter(({ instructor }) => instructor);
  const [chosen, setChosen] = useState('');
  const [phrase, setPhrase] = useState('');
  const [message, setMessage] = useState('');
  const id = chosen || (instructors[0]?.id ?? '');
  async function release(event: Event): Promise<void> {
    event.preventDefault();
    const passphrase = phrase;
    setPhrase('');
    setMessage(say('checking'));
    setMessage((await onRelease({ id, passphrase })) ?? '');
  }
  if (instructors.length === 0) return <p class="remedy">{say('noInstructor')}</p>;
  return (
    <form class="release" aria-labelledby="release-title" onSubmit={(event) => void release(event)}>
      <h2 id="release-title">{say('releaseTitle')}</h2>
      <p class="soft">{say('releaseAbout')}</p>
      <div class="field">
        <label for="release-by">{say('instructor')}</label>
        <select
          id="release-by"
          value={id}
          onChange={(event) => setChosen(event.currentTarget.value)}
        >
          {instructors.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        </select>
      </div>
      <SecretField
        id="release-phrase"
        label={say('passphrase')}
        value={phrase}
        onInput={setPhrase}
      />
      <button type="submit" class="button say">
        <span class="say-word">{say('release')}</span>
      </button>
      <p role="status" class="release-said">
        {message}
      </p>
    </form>
  );
}
