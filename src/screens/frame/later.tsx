/** Parts of the page that are fetched when they are first shown, so that the Bench opens from a small download. */

import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { frameTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

/** A component that is fetched once. A failed fetch is told, and tried again when the person asks for it. */
export function later<Props extends object>(
  fetchPart: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  let here: ComponentType<Props> | null = null;
  return function Later(props: Props) {
    const [failed, setFailed] = useState(false);
    const [, setFetched] = useState(here !== null);
    useEffect(() => {
      if (here !== null || failed) return;
      let wanted = true;
      fetchPart().then(
        (part) => {
          here = part;
          if (wanted) setFetched(true);
        },
        () => wanted && setFailed(true),
      );
      return () => {
        wanted = false;
      };
    }, [failed]);
    if (here !== null) {
      const Part = here;
      return <Part {...props} />;
    }
    return failed ? <NotFetched onAgain={() => setFailed(false)} /> : null;
  };
}

function NotFetched({ onAgain }: { readonly onAgain: () => void }) {
  const say = useSay(frameTexts);
  return (
    <p class="row" role="status">
      {say('notFetched')}
      <button type="button" class="button" onClick={onAgain}>
        {say('tryAgain')}
      </button>
    </p>
  );
}
