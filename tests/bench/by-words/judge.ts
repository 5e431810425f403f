/** Looks at every word of the walks, and at every situation that one leads to: the claims, what was said, the said list. */

import { type RunState, saidNow } from '../../../src/bench/index.ts';
import { positionOf } from '../../../src/flow/index.ts';
import { expectedLine, isSaid } from './expected-line.ts';
import { expectedList, isOfTheJob, listedOf, metAfter, numberAt } from './expected-list.ts';
import { brokenRules } from './never.ts';
import type { Turn } from './scripted-person.ts';

export class Judge {
  readonly broken: string[] = [];
  private readonly seen = new Set<RunState>();
  /** Situations that were looked at. */
  get situations(): number {
    return this.seen.size;
  }

  look(turn: Turn): void {
    const expected = expectedLine(turn);
    if (!isSaid(turn.line, expected)) {
      this.fault(turn, `it says "${turn.line}" and not "${expected}"`);
    }
    if (turn.word !== 'interrupted' && turn.event) this.takesBack(turn);
    this.meets(turn);
    if (this.seen.has(turn.after)) return;
    this.seen.add(turn.after);
    for (const rule of brokenRules(turn.after)) this.fault(turn, rule);
    this.lists(turn);
  }

  private lists(turn: Turn): void {
    const { after } = turn;
    const { items, number } = saidNow(after);
    const listed = listedOf(items).join(', ');
    const expected = expectedList(after, after.undo !== null).join(', ');
    if (sorted(listed) !== sorted(expected)) {
      this.fault(turn, `what counts is ${listed}; it should be ${expected}`);
    }
    if ((number !== undefined) !== numberAt(after)) this.fault(turn, 'a size counts or does not');
    const beside = items.filter((item) => item.event && !isOfTheJob(item));
    for (const { id } of beside)
      this.fault(turn, `"${id}" moves the job and is of no kind that may`);
  }

  private meets(turn: Turn): void {
    const met = turn.after.cutShows.join(', ');
    const expected = metAfter(turn.before, turn.after).join(', ');
    if (met !== expected)
      this.fault(turn, `"${met}" can be met by now; it should be "${expected}"`);
  }

  /** "Wrong" takes back a word where nothing turns and nothing is held, before it and after it. */
  private takesBack(turn: Turn): void {
    const quiet = ({ snapshot }: RunState) => !busy.has(positionOf(snapshot).phase);
    const may = quiet(turn.before) && quiet(turn.after);
    if (may !== (turn.after.undo !== null)) this.fault(turn, 'it can or cannot be taken back');
  }

  private fault({ word, before, after }: Turn, what: string): void {
    const at = (state: RunState) => JSON.stringify(state.snapshot.value);
    this.broken.push(`${at(before)} "${word}" ${at(after)}: ${what}`);
  }
}

const busy: ReadonlySet<string> = new Set(['start', 'cutting', 'stopping', 'hold', 'end']);

function sorted(list: string): string {
  return list.split(', ').sort().join(', ');
}
