/** Says whether every path of the job was walked, and when it is not safe, how it comes to that, turn by turn. */

import type { ToldProblem } from '../../proof/index.ts';
import { proofTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { ProofState } from '../world.ts';
import { proofLine } from './proof-line.ts';

interface ProofNoteProps {
  readonly state: ProofState | undefined;
  readonly onStop: () => void;
  readonly onAgain: () => void;
}

export function ProofNote({ state, onStop, onAgain }: ProofNoteProps) {
  const say = useSay(proofTexts);
  const { mood, text } = proofLine(state, say);
  const [problem] = state?.is === 'told' ? state.proof.problems : [];
  return (
    <section class={`proof stack ${mood}`} aria-labelledby="proof-title">
      <h2 id="proof-title">{say('title')}</h2>
      <p role={mood === 'bad' ? 'alert' : 'status'}>{text}</p>
      {mood === 'good' && <p class="hint">{say('believes')}</p>}
      {problem && <Way problem={problem} />}
      {mood === 'bad' && <p class="hint">{say('cannotBegin')}</p>}
      {mood === 'walking' && (
        <button type="button" class="button" onClick={onStop}>
          {say('stop')}
        </button>
      )}
      {state?.is === 'stopped' && (
        <button type="button" class="button" onClick={onAgain}>
          {say('again')}
        </button>
      )}
    </section>
  );
}

function Way({ problem }: { readonly problem: ToldProblem }) {
  const say = useSay(proofTexts);
  const { step, message, turns } = problem;
  return (
    <>
      {step !== '' && <p>{say('brokenAt', { step, message })}</p>}
      {turns.length > 0 && (
        <details>
          <summary>{say('way')}</summary>
          <ol class="proof-way">
            {turns.map(({ who, says }, index) => (
              <li key={index}>
                <strong>{say(who)}:</strong> {says}
              </li>
            ))}
          </ol>
        </details>
      )}
    </>
  );
}
