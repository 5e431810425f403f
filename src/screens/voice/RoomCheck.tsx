/** Ten seconds of the room's own sound, from which the ear takes how sure it must be of a word. */

import { useEffect, useState } from 'preact/hooks';
import { earTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { OpenEarBench } from '../world.ts';

const SECONDS = 10;

type Told = Awaited<ReturnType<OpenEarBench['measureRoom']>> | 'broken' | 'none';

export function RoomCheck({ bench }: { readonly bench: OpenEarBench }) {
  const say = useSay(earTexts);
  const [left, setLeft] = useState(0);
  const [told, setTold] = useState<Told>('none');
  useEffect(() => {
    if (left <= 0) return undefined;
    const timer = setTimeout(() => setLeft(left - 1), 1_000);
    return () => clearTimeout(timer);
  }, [left]);
  const measure = async () => {
    setLeft(SECONDS);
    setTold('none');
    const room = await bench.measureRoom();
    setLeft(0);
    setTold(room ?? 'broken');
  };
  return (
    <section class="card stack" aria-labelledby="room-title">
      <h2 id="room-title">{say('roomTitle')}</h2>
      <p>{say('roomAbout')}</p>
      <p class="row">
        <button
          type="button"
          class="button ear-button"
          disabled={left > 0}
          onClick={() => void measure()}
        >
          {say('roomMeasure')}
        </button>
      </p>
      <p role="status">
        <strong>{left > 0 ? say('roomMeasuring', { n: left }) : line(say, told)}</strong>
      </p>
    </section>
  );
}

function line(say: ReturnType<typeof useSay<typeof earTexts>>, told: Told): string {
  if (told === 'none' || told === null) return '';
  if (told === 'broken') return say('roomBroken');
  const measured = say(told.isSafe ? 'roomSafe' : 'roomUnsafe', { n: Math.round(told.decibels) });
  return told.advice === undefined ? measured : `${measured} ${told.advice}`;
}
