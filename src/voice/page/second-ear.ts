/** An ear with another behind it: where the browser's speech gives up, the second hears on, to the end of the visit. */
import type { Ear, EarReport, ListenFor, Meanwhile } from '../../bench/ports.ts';
import { NOTHING } from './meanwhile.ts';

/** `second` is made when it is first needed. */
export function secondEar(first: Ear, second: () => Ear): Ear {
  return new TwoEars(first, second);
}

class TwoEars implements Ear {
  private ear: Ear;
  private words: ListenFor = { phrases: [] };
  private isOpen = false;
  /** Null while it is not shut. */
  private meanwhile: Meanwhile | null = null;

  constructor(
    first: Ear,
    private readonly second: () => Ear,
  ) {
    this.ear = first;
  }

  get name(): string {
    return this.ear.name;
  }

  get hearsFreely(): boolean {
    return this.ear.hearsFreely === true;
  }

  get soundLeavesDevice(): Ear['soundLeavesDevice'] {
    return this.ear.soundLeavesDevice;
  }

  open(report: (report: EarReport) => void): Promise<void> {
    this.isOpen = true;
    this.meanwhile = null;
    return this.ear.open((one) => {
      report(one);
      if (one.kind === 'deaf' && one.deafness.otherMayHear) void this.change(report);
    });
  }

  listenFor(words: ListenFor): void {
    this.words = words;
    this.ear.listenFor(words);
  }

  shut(meanwhile?: Meanwhile): Promise<void> {
    this.meanwhile = meanwhile ?? NOTHING;
    return this.ear.shut(meanwhile);
  }

  reopen(): Promise<void> {
    this.meanwhile = null;
    return this.ear.reopen();
  }

  close(): Promise<void> {
    this.isOpen = false;
    return this.ear.close();
  }

  /** The microphone has one owner: the first lets go before the second takes it. */
  private async change(report: (report: EarReport) => void): Promise<void> {
    await this.ear.close();
    if (!this.isOpen) return;
    this.ear = this.second();
    this.ear.listenFor(this.words);
    const opening = this.ear.open(report);
    if (this.meanwhile) void this.ear.shut(this.meanwhile);
    await opening;
  }
}
