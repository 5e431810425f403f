/** What belongs to the shop and not to one job: machine cards, and how the page looks, speaks and hears. */

import { frameTexts } from '../../texts/index.ts';
import { later } from '../frame/later.tsx';
import { Operators } from '../people/Operators.tsx';
import { useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { Cards } from './Cards.tsx';
import { KeyList } from './KeyList.tsx';
import { Materials } from './Materials.tsx';
import { SettingsForm } from './SettingsForm.tsx';

const Words = later(async () => (await import('../glossary/Words.tsx')).Words);

export function Toolroom({ world }: WorldProps) {
  const say = useSay(frameTexts);
  return (
    <>
      <h1>{say('toolroom')}</h1>
      <Cards world={world} />
      <Materials world={world} />
      <Operators world={world} />
      <SettingsForm world={world} />
      <Words />
      <KeyList />
    </>
  );
}
