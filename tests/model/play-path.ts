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
  stepJob,
  viewOf,
} from '../../src/flow/index.ts';
import { identityOf } from '../../src/proof/identity.ts';

/** More than any gate asks for. */
const mostAnswers = 30;

export class Player {
  private readonly looked = new Set<string>();
  readonly places = new Set<string>();
  readonly transitions = new Set<string>();
  readonly pairs = new Set<string>();
  paths = 0;

  constructor(private readonly job: Job) {}

  /** Faults of one path, as sentences; none when all is well. */
  play(entry: FlowSnapshot, events: readonly FlowEvent[]): readonly string[] {
    this.paths += 1;
    let snapshot = entry;
    let before = '';
    const faults = [...this.look(snapshot)];
    for (const event of events) {
      snapshot = this.answerUntil(snapshot, event);
      if (!this.isSaid(snapshot, event)) {
        faults.push(`${this.at(snapshot)}: ${JSON.stringify(event)} is not on the said list.`);
      }
      const move = `${this.at(snapshot)} ${JSON.stringify(event)}`;
      this.transitions.add(move);
      if (before !== '') this.pairs.add(`${before} ${move}`);
      before = move;
      snapshot = stepJob(this.job, snapshot, event);
      faults.push(...this.look(snapshot));
    }
    return faults;
  }

  /** The person answers what is asked, as long as the next word of the path does not count yet. */
  private answerUntil(from: FlowSnapshot, event: FlowEvent): FlowSnapshot {
    let snapshot = from;
    for (let answers = 0; answers < mostAnswers && !accepts(snapshot, event); answers += 1) {
      const [asked] = askedFacts(this.job, snapshot);
      if (!asked) break;
      const { fact, state } = asked;
      snapshot = stepJob(this.job, snapshot, { type: 'fact', fact: fact.id, state: state.id });
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
    this.places.add(this.at(snapshot));
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
