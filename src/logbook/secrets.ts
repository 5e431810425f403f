/** What never leaves this device: passphrases as verifiers, the key that seals releases, and marks. No export holds them. */

import { z } from 'zod';
import type { Database } from './database.ts';
import { LogbookFault } from './fault.ts';
import {
  fromHex,
  makeVerifier,
  toHex,
  type Verifier,
  verifierShape,
  verifies,
} from './passphrase.ts';
import { fromStore } from './rows.ts';

export interface Secrets {
  /** Keeps a passphrase's verifier under a name, in place of the old one. */
  setPassphrase(name: string, passphrase: string): Promise<void>;
  hasPassphrase(name: string): Promise<boolean>;
  /** True when it is the passphrase kept under the name; false too when none is kept. */
  checkPassphrase(name: string, passphrase: string): Promise<boolean>;
  forgetPassphrase(name: string): Promise<void>;
  /** A seal over a text by a key of this device that no program can read out. */
  seal(text: string): Promise<string>;
  isSealed(text: string, seal: string): Promise<boolean>;
  /** Remembers by its seal that a text was marked on this device. */
  mark(text: string): Promise<void>;
  isMarked(text: string): Promise<boolean>;
}

const row = z.strictObject({ key: z.string(), value: z.unknown() });
const PHRASE = 'passphrase/';
const SEAL = 'seal';
const MARK = 'mark/';
const HMAC: HmacKeyGenParams = { name: 'HMAC', hash: 'SHA-256' };

export function secretsIn(db: Database): Secrets {
  const verifierOf = (name: string) => recall(db, PHRASE + name, verifierShape);
  const seal = async (text: string) => {
    const made = await crypto.subtle.sign(HMAC, await sealKey(db), bytesOf(text));
    return toHex(new Uint8Array(made));
  };
  return {
    async setPassphrase(name, passphrase) {
      await put(db, PHRASE + name, await makeVerifier(passphrase));
    },
    hasPassphrase: async (name) => (await verifierOf(name)) !== null,
    async checkPassphrase(name, passphrase) {
      const verifier: Verifier | null = await verifierOf(name);
      return verifier !== null && (await verifies(passphrase, verifier));
    },
    async forgetPassphrase(name) {
      await db.write(['secrets'], (tx) => tx.objectStore('secrets').delete(PHRASE + name));
    },
    seal,
    async isSealed(text, seal) {
      const key = await sealKey(db);
      return crypto.subtle.verify(HMAC, key, fromHex(seal), bytesOf(text));
    },
    mark: async (text) => put(db, MARK + (await seal(text)), true),
    isMarked: async (text) => (await recall(db, MARK + (await seal(text)), z.boolean())) === true,
  };
}

/** Made at the first need; two tabs that make one at once end with the same. */
async function sealKey(db: Database): Promise<CryptoKey> {
  const kept = await recall(db, SEAL, z.instanceof(CryptoKey));
  if (kept) return kept;
  const made = await crypto.subtle.generateKey(HMAC, false, ['sign', 'verify']);
  return db.write(['secrets'], async (tx) => {
    const store = tx.objectStore('secrets');
    const there = row.safeParse(await store.get(SEAL));
    if (there.success && there.data.value instanceof CryptoKey) return there.data.value;
    await store.put({ key: SEAL, value: made });
    return made;
  });
}

async function put(db: Database, key: string, value: unknown): Promise<void> {
  await db.write(['secrets'], (tx) => tx.objectStore('secrets').put({ key, value }));
}

/** @throws LogbookFault 'damaged': a secret that cannot be read opens nothing */
async function recall<T>(db: Database, key: string, shape: z.ZodType<T>): Promise<T | null> {
  const found: unknown = await db.read(['secrets'], (tx) => tx.objectStore('secrets').get(key));
  if (found === undefined) return null;
  const { value } = fromStore(row, found, (say) => say('secret'));
  const { success, data } = shape.safeParse(value);
  if (success) return data;
  throw new LogbookFault('damaged', (say) => say('damagedSecret'));
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(text);
}
