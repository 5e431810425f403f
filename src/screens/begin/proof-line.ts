/** What is said of a job's proof, and whether the job may be begun. Pure. */

import type { proofTexts, Say } from '../../texts/index.ts';
import type { ProofState } from '../world.ts';

type SayProof = Say<typeof proofTexts>;

export type ProofMood = 'open' | 'walking' | 'good' | 'bad';

export interface ProofLine {
  readonly mood: ProofMood;
  readonly text: string;
  /** May the person press "Begin"? While it is walked they may: the job then begins when it is proved. */
  readonly mayBegin: boolean;
}

export function proofLine(state: ProofState | undefined, say: SayProof): ProofLine {
  if (!state) return { mood: 'open', text: say('notAsked'), mayBegin: true };
  switch (state.is) {
    case 'walking':
      return {
        mood: 'walking',
        text: say('walking', { places: state.places }),
        mayBegin: true,
      };
    case 'stopped':
      return {
        mood: 'open',
        text: say(state.why === 'failed' ? 'failed' : 'stopped'),
        mayBegin: true,
      };
    case 'faulty':
      return { mood: 'bad', text: state.faults.join(' '), mayBegin: false };
    case 'told':
      return toldLine(state.proof, say);
  }
}

type Told = Extract<ProofState, { readonly is: 'told' }>['proof'];

function toldLine({ verdict, reason, problems, states }: Told, say: SayProof): ProofLine {
  const bad = (text: string): ProofLine => ({ mood: 'bad', text, mayBegin: false });
  switch (verdict) {
    case 'proved':
      return { mood: 'good', text: say('proved', { states }), mayBegin: true };
    case 'broken':
      return bad(say('broken', { sentence: problems[0]?.sentence ?? '' }));
    case 'too-large':
      return bad(say('tooLarge', { reason }));
    case 'unseeable':
      return bad(say('unseeable', { reason }));
  }
}
