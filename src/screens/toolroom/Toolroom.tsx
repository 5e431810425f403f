/** What belongs to the shop and not to one job: machine cards, and how the page looks, speaks and hears. */

import type { WorldProps } from '../world.ts';
import { Cards } from './Cards.tsx';
import { KeyList } from './KeyList.tsx';
import { SettingsForm } from './SettingsForm.tsx';

export function Toolroom({ world }: WorldProps) {
  return (
    <>
      <h1>Toolroom</h1>
      <Cards world={world} />
      <SettingsForm world={world} />
      <KeyList />
    </>
  );
}
