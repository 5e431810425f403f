/** Bytes as base64 (RFC 4648) and back: letters are all that JSON can carry. */

/** Small enough to be spread over the arguments of one call. */
const CHUNK = 0x2000;

export function toBase64(bytes: Uint8Array): string {
  let letters = '';
  for (let at = 0; at < bytes.length; at += CHUNK) {
    letters += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  }
  return btoa(letters);
}

/** @param text base64 that was checked to be so */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
}
