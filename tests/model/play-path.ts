/** Plays a path through the job, word by word, as a scripted person would: what is said must be on the list. */

import {
  accepts,
  askedFacts,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  joined,
  positionOf,
  saidList,
  stateOf,
  viewOf,
} from '../../src/flow/index.ts';
import { identityOf } from '../../src/proof/identity.ts';
import { type Trail, Walked } from './walked.ts';

/** More than any gate asks for. */
const mostAnswers = 30;

export class Player {
  private readonly looked = new Set<string>();
  readonly walked: Walked;

  constructor(private readonly job: Job) {
    this.walked = new Walked(job);
  }

  /** Faults of one path, as sentences; none when all is well. */
  play(entry: FlowSnapshot, events: readonly FlowEvent[]): readonly string[] {
    const trail = this.walked.begin(entry);
    let snapshot = entry;
    const faults = [...this.look(snapshot)];
    for (const event of events) {
      snapshot = this.answerUntil(snapshot, event, trail);
      if (!this.isSaid(snapshot, event)) {
        faults.push(`${this.at(snapshot)}: ${JSON.stringify(event)} is not on the said list.`);
      }
      snapshot = this.walked.move(snapshot, event, trail);
      faults.push(...this.look(snapshot));
    }
    return faults;
  }

  /** The person answers what is asked, as long as the next word of the path does not count yet. */
  private answerUntil(from: FlowSnapshot, event: FlowEvent, trail: Trail): FlowSnapshot {
    let snapshot = from;
    for (let answers = 0; answers < mostAnswers && !accepts(snapshot, event); answers += 1) {
      const [asked] = askedFacts(this.job, snapshot);
      if (!asked) break;
      const { fact, state } = asked;
      const answer: FlowEvent = { type: 'fact', fact: fact.id, state: state.id };
      snapshot = this.walked.move(snapshot, answer, trail);
    }
    return snapshot;
  }

  private at(snapshot: FlowSnapshot): string {
    return JSON.stringify([snapshot.value, snapshot.context.held?.to]);
  }

  /** A size counts when the list has a number that it lies in. */
  private isSaid(snapshot: FlowSnapshot, event: FlowEvent): boolean {
    const { items, number } = saidList(this.job, snapshot);
    if (event.type === 'reading') return number !== undefined;
    const wanted = JSON.stringify(event);
    if (items.some((item) => JSON.stringify(item.event) === wanted)) return true;
    // A report of what nobody believes is taken, but not shown; "next" is said for "carry on" in a hold.
    return (
      event.type === 'fact' || (event.type === 'next' && positionOf(snapshot).phase === 'hold')
    );
  }

  /** Each situation is looked at once. */
  private look(snapshot: FlowSnapshot): readonly string[] {
    const key = identityOf(snapshot);
    if (this.looked.has(key)) return [];
    this.looked.add(key);
    return [...this.neverRules(snapshot), ...this.said(snapshot)];
  }

  /** Written here anew, from the shop's rules and not from the hazards of the kind. Source: common practice. */
  private neverRules(snapshot: FlowSnapshot): readonly string[] {
    const { facts } = snapshot.context;
    const is = (fact: string, state: string) => stateOf(facts, fact) === state;
    const has = (fact: string) => fact in facts;
    const faults: string[] = [];
    const must = (rule: boolean, sentence: string) => {
      if (!rule) faults.push(`${this.at(snapshot)}: ${sentence}`);
    };
    const { phase } = positionOf(snapshot);
    const held = phase === 'hold' || phase === 'walk';
    if (is('spindle', 'running') && !held) {
      for (const [fact, state] of [
        ['guard', 'closed'],
        ['chuck-key', 'out'],
        ['work', 'clamped'],
        ['tool-lock', 'locked'],
      ] as const) {
        if (has(fact)) must(is(fact, state), `the spindle runs and ${fact} is not ${state}`);
      }
    }
    if (has('spindle')) {
      if (snapshot.hasTag('hands')) must(is('spindle', 'stopped'), 'hands are in and it may run');
      if (snapshot.hasTag('measuring'))
        must(is('spindle', 'stopped'), 'it is measured while it may run');
    }
    return faults;
  }

  private said(snapshot: FlowSnapshot): readonly string[] {
    const { lead, ask } = viewOf(this.job, snapshot);
    const { spoken } = joined(lead, ask);
    if (spoken.trim() !== '' && !/[{}]/.test(spoken)) return [];
    return [`${this.at(snapshot)}: it says "${spoken}"`];
  }
}
