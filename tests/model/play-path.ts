/** Plays paths through the job, word by word, as a scripted person would: what is said must be on the list. */

import {
  accepts,
  askedFacts,
  type FlowEvent,
  type FlowSnapshot,
  type Job,
  joined,
  positionOf,
  type SaidList,
  saidList,
  viewOf,
} from '../../src/flow/index.ts';
import { identityOf } from '../../src/proof/identity.ts';
import { brokenRules } from '../bench/by-words/never.ts';
import { everyEvent } from './every-event.ts';
import { nothingKnown } from './nothing-known.ts';
import { placeOf, Walked } from './walked.ts';

/** More than any gate asks for. */
const mostAnswers = 30;
/** Situations of one place from which a missing arrow is tried. */
const mostTried = 60;

/** Where some paths have come to. Paths that begin alike go on from the same one. */
interface Node {
  readonly snapshot: FlowSnapshot;
  readonly after: Map<string, Node>;
}

export class Player {
  readonly walked: Walked;
  /** One sentence each. */
  readonly faults: string[] = [];
  private readonly roots = new Map<FlowSnapshot, Node>();
  private readonly looked = new Map<string, SaidList>();
  /** By place: one of each situation. */
  private readonly places = new Map<string, Map<string, Node>>();

  constructor(private readonly job: Job) {
    this.walked = new Walked(job);
  }

  play(entry: FlowSnapshot, events: readonly FlowEvent[]): void {
    this.walked.begin(entry);
    let at = this.roots.get(entry) ?? this.come(entry);
    this.roots.set(entry, at);
    for (const event of events) {
      const key = JSON.stringify(event);
      const next = at.after.get(key) ?? this.says(this.answered(at, event), event);
      at.after.set(key, next);
      at = next;
    }
  }

  /** Tries what a model of few events leaves out: at each place, every event that an arrow of it could hear. */
  closeCircles(step: string, entry: FlowSnapshot): void {
    const { first, arrows } = this.walked.charts[step] ?? { first: '', arrows: [] };
    if (first === '"gate"') this.play(nothingKnown(this.job, step, entry), []);
    for (const { name, from, event } of arrows) {
      if (this.walked.isTaken(step, name)) continue;
      const nodes = [...(this.places.get(`${step} ${from}`)?.values() ?? [])].slice(0, mostTried);
      for (const node of nodes) {
        for (const one of everyEvent(this.job, node.snapshot, event === '' ? 'fact' : event)) {
          if (!accepts(node.snapshot, one)) continue;
          if (!this.walked.isTaken(step, name)) this.come(this.walked.move(node.snapshot, one));
        }
      }
    }
  }

  /** The person answers what is asked, as long as the next word of the path does not count yet. */
  private answered(from: Node, event: FlowEvent): Node {
    let at = from;
    for (let answers = 0; answers < mostAnswers && !accepts(at.snapshot, event); answers += 1) {
      const [asked] = askedFacts(this.job, at.snapshot);
      if (!asked) break;
      const answer: FlowEvent = { type: 'fact', fact: asked.fact.id, state: asked.state.id };
      const key = JSON.stringify(answer);
      const next = at.after.get(key) ?? this.says(at, answer);
      at.after.set(key, next);
      at = next;
    }
    return at;
  }

  private says({ snapshot }: Node, event: FlowEvent): Node {
    if (!this.isSaid(snapshot, event)) {
      this.faults.push(`${this.at(snapshot)}: ${JSON.stringify(event)} is not on the said list.`);
    }
    return this.come(this.walked.move(snapshot, event));
  }

  private come(snapshot: FlowSnapshot): Node {
    const node = { snapshot, after: new Map<string, Node>() };
    this.look(snapshot);
    const place = placeOf(snapshot);
    const alike = this.places.get(place) ?? new Map<string, Node>();
    this.places.set(place, alike);
    const key = identityOf(snapshot);
    if (!alike.has(key)) alike.set(key, node);
    return node;
  }

  private at(snapshot: FlowSnapshot): string {
    return JSON.stringify([snapshot.value, snapshot.context.held?.to]);
  }

  /** A size counts when the list has a number that it lies in. */
  private isSaid(snapshot: FlowSnapshot, event: FlowEvent): boolean {
    const { items, number } = this.look(snapshot);
    if (event.type === 'reading') return number !== undefined;
    const wanted = JSON.stringify(event);
    if (items.some((item) => JSON.stringify(item.event) === wanted)) return true;
    // A report of what nobody believes is taken, but not shown; "next" is said for "carry on" in a hold.
    return (
      event.type === 'fact' || (event.type === 'next' && positionOf(snapshot).phase === 'hold')
    );
  }

  /** Each situation is looked at once. */
  private look(snapshot: FlowSnapshot): SaidList {
    const key = identityOf(snapshot);
    const old = this.looked.get(key);
    if (old) return old;
    const list = saidList(this.job, snapshot);
    this.looked.set(key, list);
    const broken = [...brokenRules({ job: this.job, snapshot }), ...this.said(snapshot)];
    this.faults.push(...broken.map((one) => `${this.at(snapshot)}: ${one}`));
    return list;
  }

  private said(snapshot: FlowSnapshot): readonly string[] {
    const { lead, ask } = viewOf(this.job, snapshot);
    const { spoken } = joined(lead, ask);
    if (spoken.trim() !== '' && !/[{}]/.test(spoken)) return [];
    return [`it says "${spoken}"`];
  }
}
