/** Every claim a proof makes, with its ID and its sentence: the hazards of the machine kind, then those of the format. */

import type { Job } from '../flow/index.ts';
import { wordedIn } from '../texts/index.ts';

export interface Claim {
  readonly id: string;
  readonly sentence: string;
}

/** What every flow must keep, whatever the machine. Verdicts, tests and the docs cite these IDs. */
export const formatClaims = {
  'FORMAT-END': 'From everywhere the person can bring the job to its end.',
  'FORMAT-REACH': 'Every step can be come to.',
  'FORMAT-WAY-OUT':
    'Every loop can be left by an answer, a choice or a good size, not only by a loss.',
  'FORMAT-STOP': 'Stop and hold are heard everywhere, and both hold.',
  'FORMAT-NAMES': 'A refused next names what is missing, and each of it can be said.',
  'FORMAT-HOLD': 'A hold goes on in the same step once it is answered.',
  'FORMAT-BACK': 'Going back leaves nothing believed of what is undone.',
  'FORMAT-SPOKEN': 'Every value is worked out before it is spoken or shown.',
  'FORMAT-RANGE': 'No reading outside its range is taken.',
  'FORMAT-VERDICT': 'Every size inside the range leads somewhere.',
  'FORMAT-LOST': 'A lost piece is neither cut further nor judged again as if it were whole.',
  'FORMAT-REWORK':
    'A size that can still be made good leads on to be made good, not to be judged again as it is.',
  'FORMAT-OWN-ASK':
    'Where hands go in, and before the job ends, the step itself asks whether the power is off.',
  'FORMAT-POWER': 'The power is known to be on only in a cut, or where it is asked to stop.',
  'FORMAT-REPORT': 'Whatever must be so while it turns can be reported as lost.',
  'FORMAT-WALK':
    'A fault walk asks again for what hands change in it, and for the same after the same work.',
  'FORMAT-RELEASE': 'A step that waits for an instructor opens by a release alone.',
  'FORMAT-SETTLES': 'Every word is answered: no step goes round by itself for ever.',
} as const;

/** Looked at by whoever has the ear's dictionary, such as the command line; no walk can tell. */
export const heardClaim: Claim = {
  id: 'FORMAT-HEARD',
  sentence: 'Every word that may be said has a pronunciation.',
};

/** All claims of a job that a walk judges, hazards first. */
export function claimsOf(job: Job): readonly Claim[] {
  const hazards = job.flow.kind.hazards.map(({ id, sentence }) => ({
    id,
    sentence,
  }));
  const format = Object.entries(formatClaims).map(([id, sentence]) => ({
    id,
    sentence: wordedIn(job.flow.language, sentence),
  }));
  return [...hazards, ...format];
}

export function claimNamed(job: Job, id: string): Claim {
  return claimsOf(job).find((claim) => claim.id === id) ?? { id, sentence: id };
}
