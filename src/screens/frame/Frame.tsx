/** The frame round every screen but the Bench: the four places, and the screen itself. */

import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { frameTexts } from '../../texts/index.ts';
import { addressOf, type Route } from '../route.ts';
import { useSay } from '../use-say.ts';
import { Icon, type IconName } from './Icon.tsx';

type PlaceName = Extract<IconName, 'shelf' | 'slate' | 'logbook' | 'toolroom'>;

const PLACES: readonly { readonly at: Route; readonly icon: PlaceName }[] = [
  { at: { at: 'shelf' }, icon: 'shelf' },
  { at: { at: 'slate' }, icon: 'slate' },
  { at: { at: 'logbook' }, icon: 'logbook' },
  { at: { at: 'toolroom' }, icon: 'toolroom' },
];

/** Which of the four places a screen belongs to. */
const HOME: Partial<Record<Route['at'], Route['at']>> = {
  begin: 'shelf',
  kept: 'logbook',
  batch: 'logbook',
  operator: 'toolroom',
  ear: 'toolroom',
};

interface FrameProps {
  readonly route: Route;
  readonly title: string;
  readonly children: ComponentChildren;
}

export function Frame({ route, title, children }: FrameProps) {
  const say = useSay(frameTexts);
  const main = useRef<HTMLElement>(null);
  useEffect(() => {
    document.title = `${title} · Followrest`;
  }, [title]);
  // A link that led away is gone with its screen: the keyboard goes on where the next one begins.
  const address = addressOf(route);
  const old = useRef(address);
  useEffect(() => {
    const isLost = document.activeElement === document.body;
    if (old.current !== address && isLost) main.current?.focus({ preventScroll: true });
    old.current = address;
  }, [address]);
  const here = HOME[route.at] ?? route.at;
  return (
    <>
      <button type="button" class="button skip" onClick={() => main.current?.focus()}>
        {say('skip')}
      </button>
      <header class="frame-head">
        <a class="mark" href={addressOf({ at: 'shelf' })}>
          <Mark />
          Followrest
        </a>
        <nav class="places" aria-label={say('places')}>
          {PLACES.map(({ at, icon }) => (
            <a key={icon} href={addressOf(at)} aria-current={at.at === here ? 'page' : undefined}>
              <Icon name={icon} />
              {say(icon)}
            </a>
          ))}
        </nav>
      </header>
      <main class="frame-main" ref={main} tabIndex={-1}>
        {children}
      </main>
    </>
  );
}

/** A bar in the jaws of a follow rest. */
function Mark() {
  return (
    <svg viewBox="0 0 96 96" aria-hidden="true">
      <path
        d="M76 30V20H24a6 6 0 0 0-6 6v52"
        fill="none"
        stroke="currentColor"
        stroke-width="11"
        stroke-linecap="round"
        stroke-linejoin="round"
      />
      <circle cx="56" cy="58" r="20" fill="var(--dye)" />
      <path d="M24 58h9M56 24v11" stroke="currentColor" stroke-width="10" stroke-linecap="round" />
    </svg>
  );
}
