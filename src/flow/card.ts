/** A machine card with its measures turned into numbers in base units. */

import { type Language, type Worded, worded } from '../texts/index.ts';
import {
  type Material,
  parseMeasure,
  type Quantity,
  type RuleValue,
  shopMaterialFaults,
} from '../trade/index.ts';
import type { CardFile } from './card-shape.ts';
import type { Fault } from './fault.ts';
import type { SpeedQuantity } from './kind-shape.ts';
import { type FileResult, readCardFile } from './read-file.ts';
import { inOrder } from './source.ts';

/** What a flow can take from a card by {"card": name}, with the quantity of each. */
export const cardFields: Readonly<
  Record<string, Quantity | 'word' | 'speed' | 'speeds' | 'feeds'>
> = {
  speeds: 'speeds',
  feeds: 'feeds',
  topSpeed: 'speed',
  lowestSpeed: 'speed',
  chuckLimit: 'spindleSpeed',
  motorPower: 'power',
  efficiency: 'ratio',
  crossReads: 'word',
  crossDivision: 'length',
  compoundDivision: 'length',
  quillPerTurn: 'length',
  leadScrewPitch: 'length',
  swing: 'length',
};

export interface Card {
  readonly id: string;
  readonly title: string;
  readonly machineKind: string;
  readonly units: 'metric' | 'inch';
  /** What its speeds are: turns of a spindle, or metres a minute of a saw band. */
  readonly speedQuantity: SpeedQuantity;
  /** By the names in cardFields, in base units; a field the card leaves out is missing here. */
  readonly values: Readonly<Record<string, RuleValue>>;
  /** The shop's own, each without faults. */
  readonly materials?: readonly Material[];
}

/** Reads a card file. Every measure must carry a unit of its quantity; what is wrong with one is told in `language`. */
export function readCard(file: string, text: string, language?: Language): FileResult<Card> {
  const read = readCardFile(file, text);
  if (!read.ok) return read;
  const faults: Fault[] = [];
  const complain: Complain = (path, message) => faults.push(read.source.fault(path, message));
  const values = cardValues(read.value, { complain, language });
  const { materials = [] } = read.value;
  for (const message of shopMaterialFaults(materials)) {
    faults.push(read.source.fault(['materials'], message));
  }
  if (faults.length > 0) return { ok: false, faults: inOrder(faults) };
  const { id, title, machineKind, units } = read.value;
  const own = materials.length > 0 ? { materials } : {};
  const speedQuantity = speedQuantityOf(read.value);
  const value = { id, title, machineKind, units, speedQuantity, values, ...own };
  return { ok: true, value, source: read.source };
}

/** By the unit of the first; another unit among them is a fault of its own. */
function speedQuantityOf({ speeds }: CardFile): SpeedQuantity {
  return parseMeasure(speeds[0] ?? '', 'spindleSpeed').ok ? 'spindleSpeed' : 'surfaceSpeed';
}

type Complain = (path: readonly (string | number)[], message: Worded) => void;
interface Teller {
  readonly complain: Complain;
  readonly language: Language | undefined;
}

function cardValues(card: CardFile, teller: Teller): Record<string, RuleValue> {
  const values: Record<string, RuleValue> = {};
  const speeds = ascending(measures(card.speeds, 'speeds', speedQuantityOf(card), teller));
  values.speeds = speeds;
  values.feeds = ascending(measures(card.feeds, 'feeds', 'feedPerRev', teller));
  values.topSpeed = speeds.at(-1) ?? 0;
  values.lowestSpeed = speeds[0] ?? 0;
  for (const [name, quantity] of Object.entries(cardFields)) {
    const given = card[name as keyof CardFile];
    if (quantity === 'speed' || quantity === 'speeds' || quantity === 'feeds') continue;
    if (quantity === 'word' || typeof given === 'number') {
      if (given !== undefined) values[name] = given as RuleValue;
    } else if (typeof given === 'string') {
      values[name] = measure(given, [name], quantity, teller);
    }
  }
  return values;
}

function measures(
  list: readonly string[],
  name: string,
  quantity: Quantity,
  teller: Teller,
): number[] {
  return list.map((text, index) => measure(text, [name, index], quantity, teller));
}

function measure(
  text: string,
  path: readonly (string | number)[],
  quantity: Quantity,
  { complain, language }: Teller,
): number {
  const read = parseMeasure(text, quantity, language);
  if (read.ok && !/[a-z"]/i.test(text)) {
    complain(
      path,
      worded`"${text}" has no unit. Write it as on the machine, such as "0.02 mm" or "450 rpm".`,
    );
    return 0;
  }
  if (!read.ok) {
    complain(path, read.fault);
    return 0;
  }
  if (read.value <= 0) complain(path, worded`It must be above zero, found "${text}".`);
  return read.value;
}

function ascending(numbers: readonly number[]): readonly number[] {
  return [...numbers].sort((a, b) => a - b);
}
