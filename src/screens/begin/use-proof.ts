/** Has every path of the job walked while its numbers are filled in. */

import { useCallback, useEffect } from 'preact/hooks';
import { useChanges } from '../use-changes.ts';
import type { AppWorld, ProofChoice, ProofState } from '../world.ts';

/** Milliseconds without a change before the walk begins: not one for each digit. */
const pause = 400;

export interface ProofShown {
  readonly state: ProofState | undefined;
  readonly again: () => void;
  readonly stop: () => void;
}

/** `choice` is null while a number is missing or wrong. */
export function useProof({ proofs }: AppWorld, choice: ProofChoice | null): ProofShown {
  useChanges(useCallback((changed: () => void) => proofs.subscribe(changed), [proofs]));
  const key = JSON.stringify(choice);
  const first = choice !== null && proofs.state(choice) === undefined;
  useEffect(() => {
    if (choice === null || !first) return;
    const timer = setTimeout(() => proofs.ask(choice), pause);
    return () => clearTimeout(timer);
  }, [proofs, key, first]);
  return {
    state: choice === null ? undefined : proofs.state(choice),
    again: () => choice && proofs.ask(choice),
    stop: () => proofs.stop(),
  };
}
