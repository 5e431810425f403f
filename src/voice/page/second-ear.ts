/** An ear with another behind it: where the browser's speech gives up, the second hears on, to the end of the visit. */
import type { Ear, EarReport, ListenFor } from '../../bench/ports.ts';

/** `second` is made when it is first needed. */
export function secondEar(first: Ear, second: () => Ear): Ear {
  return new TwoEars(first, second);
}

class TwoEars implements Ear {
  private ear: Ear;
  private words: ListenFor = { phrases: [] };
  private isOpen = false;
  /** What it is shut but for; null while it is not shut. */
  private still: readonly string[] | null = null;

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
    this.still = null;
    return this.ear.open((one) => {
      report(one);
      if (one.kind === 'deaf' && one.deafness.otherMayHear) void this.change(report);
    });
  }

  listenFor(words: ListenFor): void {
    this.words = words;
    this.ear.listenFor(words);
  }

  shut(still: readonly string[] = []): Promise<void> {
    this.still = still;
    return this.ear.shut(still);
  }

  reopen(): Promise<void> {
    this.still = null;
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
    if (this.still) void this.ear.shut(this.still);
    await opening;
  }
}
