/** The end of a run: what was measured, against its limits. */

import type { RunState } from '../../bench/index.ts';
import { ReadingsList } from '../logbook/ReadingsList.tsx';

export function Done({ state }: { readonly state: RunState }) {
  return <ReadingsList readings={state.readings} job={state.job} held={state.snapshot} />;
}
