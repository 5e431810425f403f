/**
 * Names for the speeds of a job. To a chart a speed is the same as another or it is not; how it stands to a limit is asked of
 * the step that runs at it, and stands in the step's shape (shape.ts). So two jobs whose steps run at the same speeds and at
 * different ones alike are one to the walk, whatever the speeds are: another card, another material.
 */

import { type Job, readingsBehind } from '../flow/index.ts';

export interface Speeds {
  /** Different for different speeds, in rev/min. */
  nameOf(speed: number): string | number;
  /** No number where it is a speed of other jobs alone: it is the same as none of this one's. */
  speedOf(name: string | number): number;
}

/** Each by its own number: so rows of jobs with different speeds may meet. */
export const plainSpeeds: Speeds = { nameOf: (speed) => speed, speedOf: Number };

/** Called one after the other, in the order in which they are first asked for. */
export class NamedSpeeds implements Speeds {
  private readonly names = new Map<number, string>();
  private readonly speeds = new Map<string | number, number>();

  nameOf(speed: number): string {
    const old = this.names.get(speed);
    if (old !== undefined) return old;
    const made = `speed ${this.names.size}`;
    this.names.set(speed, made);
    this.speeds.set(made, speed);
    return made;
  }

  speedOf(name: string | number): number {
    return this.speeds.get(name) ?? Number.NaN;
  }

  /** Names the speeds of all steps that wait for no reading, the first step first. */
  nameAll({ flow, numbers }: Job): void {
    for (const step of flow.file.steps) {
      if (!('speed' in step) || readingsBehind(step.speed, flow.scope).length > 0) continue;
      const speed = numbers.number(step.speed, {});
      if (speed !== undefined) this.nameOf(speed);
    }
  }
}
