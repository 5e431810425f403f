/**
 * Which states of a fact anything asks for. States that nothing asks for are one state to a proof: "guard open", and not
 * knowing, open no gate, end no step and meet no hazard differently. They differ only in whether the same report counts
 * a second time, which leads back to where it was. So a lost fact and an unknown one need not be walked twice.
 */

import type { Condition, FlowEvent, Job, MachineKind, WantedFacts } from '../flow/index.ts';
import { isLoss } from '../flow/index.ts';

export type AskedStates = ReadonlyMap<string, ReadonlySet<string>>;

export function askedStates(job: Job): AskedStates {
  const { kind } = job.flow;
  const asked = new Map(kind.facts.map((fact) => [fact.id, new Set<string>()]));
  const ask = (fact: string, state: string) => asked.get(fact)?.add(state);
  const askAll = (wanted: WantedFacts) => {
    for (const [fact, state] of Object.entries(wanted)) ask(fact, state);
  };
  const { power, tool, speed, stop } = kind.roles;
  ask(power.fact, power.on);
  ask(power.fact, power.off);
  ask(tool.fact, tool.clear);
  ask(speed.fact, speed.set);
  ask(stop.fact, stop.released);
  for (const { gate, cutting, step } of job.plans.values()) {
    askAll(gate);
    askAll(cutting);
    if (step.kind === 'check') askAll(step.facts);
    if (step.kind === 'do') askAll(step.ends);
  }
  for (const walk of kind.walks) for (const item of walk.items) askAll(item.needs);
  askHazards(kind, ask);
  return asked;
}

function askHazards(kind: MachineKind, ask: (fact: string, state: string) => void): void {
  const look = (condition: Condition): void => {
    if ('all' in condition) condition.all.forEach(look);
    else if ('any' in condition) condition.any.forEach(look);
    else if ('fact' in condition) {
      ask(condition.fact, 'is' in condition ? condition.is : condition.not);
    }
  };
  for (const hazard of kind.hazards) look(hazard.never);
}

/** Of the reports of states that nothing asks for, one for each fact; answers that nobody asks for are never taken. */
export function worthPlaying(
  events: readonly FlowEvent[],
  asked: AskedStates,
  kind: MachineKind,
): readonly FlowEvent[] {
  const seen = new Set<string>();
  return events.filter((event) => {
    if (event.type !== 'fact' || asked.get(event.fact)?.has(event.state)) return true;
    if (!isLoss(kind, event.fact, event.state) || seen.has(event.fact)) return false;
    seen.add(event.fact);
    return true;
  });
}
