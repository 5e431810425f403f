/** Proves one flow with every machine card of its kind for the numbers that may be put into it, and tells the outcome. */

import type { Card, Flow } from '../flow/index.ts';
import { type InputsProof, type Memory, proveInputs, type Verdict } from '../proof/index.ts';

export interface InputsReport {
  readonly flow: string;
  readonly ok: boolean;
  readonly verdict: Verdict;
  readonly cards: readonly (InputsProof & { readonly card: string; readonly ms: number })[];
}

const order: readonly Verdict[] = ['broken', 'unseeable', 'too-large', 'proved'];

/** `memory` is kept over all flows and cards of the command. */
export function reportInputs(flow: Flow, cards: readonly Card[], memory: Memory): InputsReport {
  const proofs = cards.map((card) => {
    const begun = performance.now();
    const proof = proveInputs(flow, card, memory);
    return { card: card.id, ...proof, ms: Math.round(performance.now() - begun) };
  });
  const verdicts = proofs.map(({ verdict }) => verdict);
  const verdict = order.find((one) => verdicts.includes(one)) ?? 'too-large';
  return { flow: flow.file.id, ok: verdict === 'proved', verdict, cards: proofs };
}

export function tellInputs({ flow, verdict, cards }: InputsReport): string {
  return [
    `${flow}, for the numbers that may be put in: ${verdict}`,
    ...cards.flatMap(({ card, verdict: own, reason, covers, problems, ms }) => [
      `  ${card}: ${own}${reason ? ` ${reason}` : ''} · ${(ms / 1000).toFixed(1)} s`,
      ...covers.map((line) => `    ${line}`),
      ...problems.map(
        ({ claim, step, numbers }) =>
          `    ${claim} in step "${step}" with ${numbers || 'what is proposed'}`,
      ),
    ]),
  ].join('\n');
}
