/** Who works here: names picked from a list of this device, some of them instructors with a passphrase. No account. */

import { z } from 'zod';
import type { Logbook } from '../logbook/index.ts';
import { SHORTEST_PASSPHRASE } from '../logbook/index.ts';
import type { Credential, Operator, OperatorsDesk } from '../screens/world.ts';
import { englishLanguage, frontTexts, type Language, type Say, sayIn } from '../texts/index.ts';
import { openPatience, type PatienceMemory } from './patience.ts';

export const operatorKey = 'operator/';

const operatorShape = z.strictObject({
  id: z.string().min(1).max(60),
  name: z.string().trim().min(1).max(60),
  addedAt: z.number().nonnegative(),
  /** Has been an instructor; whether a passphrase is set on this device is not part of the list. */
  instructor: z.literal(true).exactOptional(),
});
type KeptOperator = z.infer<typeof operatorShape>;

export const parseOperator = (value: unknown): KeptOperator => operatorShape.parse(value);

export interface Operators extends OperatorsDesk {
  /** The operator with this name, added when there is none. */
  named(name: string): Promise<Operator>;
  /** Reads the list again, as after a file was taken in. */
  again(): Promise<void>;
  /** Null when the passphrase is this instructor's; else a sentence. Wrong ones make the next wait. */
  check(by: Credential): Promise<string | null>;
}

type Keeper = Pick<Logbook, 'keep' | 'recallAll' | 'forget' | 'secrets'>;

export async function openOperators(
  logbook: Keeper,
  now: () => number,
  language: Language = englishLanguage,
  memory?: PatienceMemory,
): Promise<Operators> {
  const desk = new Desk(logbook, now, sayIn(language, frontTexts), memory);
  await desk.again();
  return desk;
}

class Desk implements Operators {
  private list: readonly Operator[] = [];
  private readonly patience: ReturnType<typeof openPatience>;

  constructor(
    private readonly logbook: Keeper,
    private readonly now: () => number,
    private readonly say: Say<typeof frontTexts>,
    memory: PatienceMemory | undefined,
  ) {
    this.patience = openPatience(now, memory);
  }

  all(): readonly Operator[] {
    return this.list;
  }

  async again(): Promise<void> {
    const kept = await this.logbook.recallAll(operatorKey, parseOperator);
    const list = await Promise.all(
      [...kept.values()].map(async ({ id, name, addedAt }) => ({
        ...{ id, name, addedAt },
        instructor: await this.logbook.secrets.hasPassphrase(id),
      })),
    );
    this.list = list.sort((one, other) => one.name.localeCompare(other.name));
  }

  async named(name: string): Promise<Operator> {
    const there = this.find(name);
    if (there) return there;
    await this.keep({ id: crypto.randomUUID(), name: name.trim(), addedAt: this.now() });
    return this.find(name) ?? Promise.reject(new Error(this.say('nameMissing', { name })));
  }

  async add(name: string): Promise<string | null> {
    if (name.trim() === '') return this.say('writeName');
    if (this.find(name)) return this.say('nameThere', { name: name.trim() });
    await this.named(name);
    return null;
  }

  async rename(id: string, name: string): Promise<string | null> {
    const operator = this.list.find((one) => one.id === id);
    if (!operator) return this.say('nameGone');
    if (name.trim() === '') return this.say('writeName');
    const other = this.find(name);
    if (other && other.id !== id) return this.say('nameThere', { name: name.trim() });
    await this.keep({ ...keptOf(operator), name: name.trim() });
    return null;
  }

  /** Runs keep the name they were made under. An instructor goes only with their own passphrase. */
  async remove(id: string, passphrase?: string): Promise<string | null> {
    const operator = this.list.find((one) => one.id === id);
    if (operator?.instructor) {
      const wrong = await this.check({ id, passphrase: passphrase ?? '' });
      if (wrong !== null) return wrong;
      await this.logbook.secrets.forgetPassphrase(id);
    }
    await this.logbook.forget(operatorKey + id);
    await this.again();
    return null;
  }

  /** The first instructor of a device is whoever says so; each later one needs the word of one who is. */
  async makeInstructor(id: string, passphrase: string, by?: Credential): Promise<string | null> {
    const operator = this.list.find((one) => one.id === id);
    if (!operator) return this.say('nameGone');
    if (passphrase.length < SHORTEST_PASSPHRASE) {
      return this.say('shortPassphrase', { n: SHORTEST_PASSPHRASE });
    }
    if (this.list.some(({ instructor }) => instructor)) {
      const wrong = by ? await this.check(by) : this.say('mustAgree');
      if (wrong !== null) return wrong;
    }
    await this.logbook.secrets.setPassphrase(id, passphrase);
    await this.keep({ ...keptOf(operator), instructor: true });
    return null;
  }

  async check({ id, passphrase }: Credential): Promise<string | null> {
    if (!this.list.some((one) => one.id === id && one.instructor)) return this.say('mustAgree');
    const wait = this.patience.wait();
    if (wait > 0) return this.say('wait', { n: Math.ceil(wait / 1000) });
    if (await this.logbook.secrets.checkPassphrase(id, passphrase)) {
      this.patience.right();
      return null;
    }
    this.patience.wrong();
    return this.say('wrongPassphrase');
  }

  private find(name: string): Operator | undefined {
    const wanted = name.trim().toLowerCase();
    return this.list.find((one) => one.name.toLowerCase() === wanted);
  }

  private async keep(operator: KeptOperator): Promise<void> {
    await this.logbook.keep(operatorKey + operator.id, operator);
    await this.again();
  }
}

function keptOf({ id, name, addedAt, instructor }: Operator): KeptOperator {
  return { id, name, addedAt, ...(instructor ? { instructor } : {}) };
}
