/** Fetches the browser's own speech pack, so that its ear works without sending sound away. */

import { useState } from 'preact/hooks';
import { earTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';

type State = 'idle' | 'fetching' | 'fetched' | 'notFetched';

/** The browser may never answer: the asking itself ends after two minutes. */
export function EarPack({ world }: WorldProps) {
  const say = useSay(earTexts);
  const [state, setState] = useState<State>('idle');
  const needed = world.ears().some(({ needsFetching }) => needsFetching);
  if (!needed && state !== 'fetched') return null;
  const fetchPack = async () => {
    setState('fetching');
    setState((await world.fetchPack()) ? 'fetched' : 'notFetched');
  };
  return (
    <>
      <p class="row">
        <button
          type="button"
          class="button tall"
          disabled={state === 'fetching' || state === 'fetched'}
          onClick={() => void fetchPack()}
        >
          {say('fetch')}
        </button>
      </p>
      <p role="status">{state === 'idle' ? '' : say(state)}</p>
    </>
  );
}
