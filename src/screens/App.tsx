/** The whole of what is seen: the address chooses a screen. */

import { useCallback, useLayoutEffect, useState } from 'preact/hooks';
import { frameTexts, sayIn } from '../texts/index.ts';
import { Frame } from './frame/Frame.tsx';
import { later } from './frame/later.tsx';
import { useLook } from './frame/use-look.ts';
import { type Route, readRoute } from './route.ts';
import { Shelf } from './shelf/Shelf.tsx';
import { useChanges } from './use-changes.ts';
import { LanguageOfPage } from './use-say.ts';
import type { WorldProps } from './world.ts';

const BenchScreen = later(async () => (await import('./bench/BenchScreen.tsx')).BenchScreen);
const Begin = later(async () => (await import('./begin/Begin.tsx')).Begin);
const Logbook = later(async () => (await import('./logbook/Logbook.tsx')).Logbook);
const KeptRunScreen = later(
  async () => (await import('./logbook/KeptRunScreen.tsx')).KeptRunScreen,
);
const BatchScreen = later(async () => (await import('./logbook/BatchScreen.tsx')).BatchScreen);
const OperatorSheet = later(async () => (await import('./people/OperatorSheet.tsx')).OperatorSheet);
const Slate = later(async () => (await import('./slate/Slate.tsx')).Slate);
const EarSetUp = later(async () => (await import('./voice/EarSetUp.tsx')).EarSetUp);
const Toolroom = later(async () => (await import('./toolroom/Toolroom.tsx')).Toolroom);

const TITLES = {
  shelf: 'shelf',
  begin: 'begin',
  run: 'bench',
  logbook: 'logbook',
  kept: 'logbook',
  batch: 'logbook',
  operator: 'toolroom',
  slate: 'slate',
  toolroom: 'toolroom',
  ear: 'toolroom',
} as const satisfies Readonly<Record<Route['at'], string>>;

export function App({ world }: WorldProps) {
  const route = useRoute();
  useChanges(useCallback((changed) => world.subscribe(changed), [world]));
  useLook(world.settings());
  if (route.at === 'run') {
    return (
      <LanguageOfPage.Provider value={world.language}>
        <BenchScreen key={route.run} world={world} runId={route.run} />
      </LanguageOfPage.Provider>
    );
  }
  return (
    <LanguageOfPage.Provider value={world.language}>
      <Frame route={route} title={sayIn(world.language, frameTexts)(TITLES[route.at])}>
        <Screen route={route} world={world} />
      </Frame>
    </LanguageOfPage.Provider>
  );
}

function Screen({ route, world }: WorldProps & { readonly route: Route }) {
  switch (route.at) {
    case 'begin':
      return <Begin key={`${route.flow} ${route.like}`} world={world} {...route} />;
    case 'logbook':
      return <Logbook key={route.operator} world={world} {...route} />;
    case 'batch':
      return <BatchScreen world={world} batch={route.batch} />;
    case 'operator':
      return <OperatorSheet world={world} operator={route.operator} />;
    case 'kept':
      return <KeptRunScreen key={route.run} world={world} runId={route.run} />;
    case 'slate':
      return <Slate world={world} rule={route.rule} />;
    case 'ear':
      return <EarSetUp world={world} />;
    case 'toolroom':
      return <Toolroom world={world} />;
    default:
      return <Shelf world={world} />;
  }
}

/** The screen of the address, followed as it changes; each new screen is read from its top. */
function useRoute(): Route {
  const [hash, setHash] = useState(location.hash);
  // Before the page is painted: an address that changed until then would never be followed.
  useLayoutEffect(() => {
    const follow = () => {
      setHash(location.hash);
      window.scrollTo(0, 0);
    };
    window.addEventListener('hashchange', follow);
    return () => window.removeEventListener('hashchange', follow);
  }, []);
  return readRoute(hash);
}
