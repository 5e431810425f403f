/**
 * What is kept of a passphrase: never itself, only what PBKDF2 makes of it (WebCrypto; SHA-256, a salt of its own,
 * 600,000 rounds: OWASP, Password Storage Cheat Sheet). It slows a guesser down; it does not make a short phrase a good one.
 */

import { z } from 'zod';

export interface Verifier {
  readonly algorithm: 'PBKDF2-SHA-256';
  readonly iterations: number;
  /** 16 random bytes, in hexadecimal. */
  readonly salt: string;
  /** 32 bytes, in hexadecimal. */
  readonly hash: string;
}

const LEAST_ITERATIONS = 600_000;
export const SHORTEST_PASSPHRASE = 8;

const hex = (bytes: number) => z.string().regex(new RegExp(`^[0-9a-f]{${bytes * 2}}$`));

export const verifierShape: z.ZodType<Verifier> = z.strictObject({
  algorithm: z.literal('PBKDF2-SHA-256'),
  iterations: z.number().int().min(LEAST_ITERATIONS).max(10_000_000),
  salt: hex(16),
  hash: hex(32),
});

/** A new salt each time: two people with one phrase cannot be told by it. */
export async function makeVerifier(passphrase: string): Promise<Verifier> {
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const hash = await derive(passphrase, salt, LEAST_ITERATIONS);
  return {
    algorithm: 'PBKDF2-SHA-256',
    iterations: LEAST_ITERATIONS,
    salt: toHex(salt),
    hash: toHex(hash),
  };
}

export async function verifies(passphrase: string, verifier: Verifier): Promise<boolean> {
  const hash = await derive(passphrase, fromHex(verifier.salt), verifier.iterations);
  return isSame(hash, fromHex(verifier.hash));
}

/** The same letters typed on another keyboard give the same bytes (Unicode NFKC). */
async function derive(
  passphrase: string,
  salt: Uint8Array<ArrayBuffer>,
  iterations: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const bytes = new TextEncoder().encode(passphrase.normalize('NFKC'));
  const key = await crypto.subtle.importKey('raw', bytes, 'PBKDF2', false, ['deriveBits']);
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations };
  return new Uint8Array(await crypto.subtle.deriveBits(how, key, 256));
}

/** Looks at every byte, however early two differ. */
function isSame(one: Uint8Array, other: Uint8Array): boolean {
  if (one.length !== other.length) return false;
  return one.reduce((differs, byte, at) => differs | (byte ^ (other[at] ?? 0)), 0) === 0;
}

export function toHex(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

export function fromHex(text: string): Uint8Array<ArrayBuffer> {
  return new Uint8Array((text.match(/../g) ?? []).map((byte) => Number.parseInt(byte, 16)));
}
