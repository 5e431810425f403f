/** The end of a run: what was measured, against its limits; and how the batch runs, where this was a piece of one. */

import { characteristics, type RunState } from '../../bench/index.ts';
import { BatchSizes } from '../batch/BatchSizes.tsx';
import { ReadingsList } from '../logbook/ReadingsList.tsx';

export function Done({ state }: { readonly state: RunState }) {
  const { job, readings, snapshot, batch } = state;
  return (
    <>
      <ReadingsList readings={readings} job={job} held={snapshot} />
      {batch && <BatchSizes job={job} sizes={characteristics(job, [...batch.earlier, readings])} />}
    </>
  );
}
