/** Each size of a batch over its pieces: the drift in words, the chart of means and ranges, the figures behind it. */

import {
  batchFigures,
  type Characteristic,
  driftTold,
  groupSize,
  groupsOf,
} from '../../bench/index.ts';
import type { Job } from '../../flow/index.ts';
import { batchTexts } from '../../texts/index.ts';
import { toBase } from '../../trade/index.ts';
import { WhyFigures } from '../frame/WhyFigures.tsx';
import { ControlChart } from '../plots/ControlChart.tsx';
import { useSay } from '../use-say.ts';

interface BatchSizesProps {
  readonly job: Job;
  readonly sizes: readonly Characteristic[];
}

/** Two groups are the least that a chart can be drawn of. */
const leastPieces = 4;

export function BatchSizes({ job, sizes }: BatchSizesProps) {
  const say = useSay(batchTexts);
  if (sizes.length === 0) return null;
  return (
    <section class="stack batch-sizes" aria-labelledby="batch-sizes">
      <h2 id="batch-sizes">{say('batch')}</h2>
      {sizes.map((one) => (
        <OneSize key={one.id} job={job} size={one} />
      ))}
    </section>
  );
}

function OneSize({ job, size }: { readonly job: Job; readonly size: Characteristic }) {
  const say = useSay(batchTexts);
  const { label, values, unit } = size;
  const drift = driftTold(job, size);
  const inMm = values.map((value) => toBase(value, unit, 'length'));
  return (
    <section class="card stack" aria-label={say('over', { label })}>
      <h3>
        {label}: {say('pieces', { n: values.length })}
      </h3>
      {drift && (
        <p class="batch-drift" role="status">
          <strong>{drift.line}</strong>
        </p>
      )}
      {values.length < leastPieces ? (
        <p class="soft">{say('tooFew', { n: values.length })}</p>
      ) : (
        <figure class="picture">
          <ControlChart
            title={say('chartOf', { label, n: groupSize(values.length) })}
            subgroups={groupsOf(inMm)}
          />
        </figure>
      )}
      <WhyFigures label={say('over', { label })} figures={batchFigures(job, size)} />
      <p class="hint">
        {say('readings')}: {values.join(', ')} {unit}
      </p>
    </section>
  );
}
