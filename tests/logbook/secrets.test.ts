import { pbkdf2Sync } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { fromHex, makeVerifier, verifies } from '../../src/logbook/passphrase.ts';
import { allRows, freshLogbook, putRaw } from './fresh-store.ts';

describe('a passphrase', () => {
  it('is kept as PBKDF2-HMAC-SHA-256 makes it with 600,000 rounds (OWASP, Password Storage Cheat Sheet), as Node derives it too', async () => {
    const { algorithm, iterations, salt, hash } = await makeVerifier('blue anvil morning');
    expect([algorithm, iterations, salt.length]).toEqual(['PBKDF2-SHA-256', 600_000, 32]);
    const other = pbkdf2Sync('blue anvil morning', fromHex(salt), 600_000, 32, 'sha256');
    expect(hash).toBe(other.toString('hex'));
  });

  it('opens, and nothing else does', async () => {
    const verifier = await makeVerifier('blue anvil morning');
    expect(await verifies('blue anvil morning', verifier)).toBe(true);
    expect(await verifies('blue anvil mornin', verifier)).toBe(false);
    expect(await verifies('', verifier)).toBe(false);
  });

  it('is in no row of the store, plain or turned round', async () => {
    const { logbook } = await freshLogbook();
    await logbook.secrets.setPassphrase('ruth', 'blue anvil morning');
    const text = JSON.stringify(await allRows());
    expect(text).toContain('passphrase/ruth');
    expect(text).not.toContain('anvil');
    expect(text).not.toContain(Buffer.from('blue anvil morning').toString('hex'));
  });

  it('is nobody’s before it is set, and after it is forgotten', async () => {
    const { logbook } = await freshLogbook();
    const { secrets } = logbook;
    expect(await secrets.hasPassphrase('ruth')).toBe(false);
    expect(await secrets.checkPassphrase('ruth', '')).toBe(false);
    await secrets.setPassphrase('ruth', 'blue anvil morning');
    expect(await secrets.checkPassphrase('ruth', 'blue anvil morning')).toBe(true);
    expect(await secrets.checkPassphrase('ida', 'blue anvil morning')).toBe(false);
    await secrets.forgetPassphrase('ruth');
    expect(await secrets.hasPassphrase('ruth')).toBe(false);
  });

  it('whose row is damaged or made easy opens nothing', async () => {
    const { logbook } = await freshLogbook();
    const easy = { ...(await makeVerifier('x')), iterations: 1 };
    await putRaw('secrets', { key: 'passphrase/ruth', value: easy });
    await expect(logbook.secrets.checkPassphrase('ruth', 'x')).rejects.toMatchObject({
      kind: 'damaged',
    });
  });
});

describe('the seal', () => {
  it('is true on this device for this text alone', async () => {
    const { logbook } = await freshLogbook();
    const seal = await logbook.secrets.seal('run-1 face ruth');
    expect(await logbook.secrets.isSealed('run-1 face ruth', seal)).toBe(true);
    expect(await logbook.secrets.isSealed('run-2 face ruth', seal)).toBe(false);
    expect(await logbook.secrets.isSealed('run-1 face ruth', '00'.repeat(32))).toBe(false);
    expect(await logbook.secrets.isSealed('run-1 face ruth', 'no seal')).toBe(false);
    const other = await freshLogbook();
    expect(await other.logbook.secrets.isSealed('run-1 face ruth', seal)).toBe(false);
  });

  it('is made by a key that cannot be read out', async () => {
    const { logbook } = await freshLogbook();
    await logbook.secrets.seal('x');
    const [row] = (await allRows()).secrets as readonly { readonly value: CryptoKey }[];
    expect(row?.value.extractable).toBe(false);
    await expect(crypto.subtle.exportKey('raw', row?.value as CryptoKey)).rejects.toThrow();
  });
});
