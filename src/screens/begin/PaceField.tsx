/** How much is to be said in this run. The gates are the same at every pace, and it can be changed at any moment. */

import type { Pace } from '../../bench/index.ts';
import { apprenticeTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';

const PACES = [
  ['first-time', 'firstTime', 'firstTimeAbout'],
  ['familiar', 'familiar', 'familiarAbout'],
  ['own-pace', 'ownPace', 'ownPaceAbout'],
] as const;

interface PaceFieldProps {
  readonly chosen: Pace;
  readonly onChoose: (pace: Pace) => void;
}

export function PaceField({ chosen, onChoose }: PaceFieldProps) {
  const say = useSay(apprenticeTexts);
  return (
    <fieldset class="pick paces">
      <legend>{say('pace')}</legend>
      <p class="hint">{say('paceHint')}</p>
      {PACES.map(([pace, name, about]) => (
        <label key={pace} class="pick-one">
          <input
            type="radio"
            name="pace"
            value={pace}
            checked={pace === chosen}
            onChange={() => onChoose(pace)}
          />
          <span>
            <strong>{say(name)}</strong>
            <span class="hint">{say(about)}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
