/**
 * Shop noise, made by formula and the same each time: the sounds are ours, no recordings.
 * 16 kHz, any scale; `mixed` sets the level.
 */

export type Random = () => number;

/** Numbers from 0 to 1, the same for the same seed (mulberry32, public domain). */
export function random(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

function normal(next: Random): number {
  return Math.sqrt(-2 * Math.log(next() + 1e-12)) * Math.cos(2 * Math.PI * next());
}

/** Coolant and air: broad, falling gently towards the high end. */
export function broadband(length: number, next: Random): Float32Array {
  let slow = 0;
  let quick = 0;
  return Float32Array.from({ length }, () => {
    const white = normal(next);
    slow = 0.97 * slow + 0.25 * white;
    quick = 0.6 * quick + 0.5 * white;
    return slow + 0.5 * quick + 0.25 * white;
  });
}

/** A motor: mains hum with forty harmonics, beating slowly, over a little rumble. */
export function hum(length: number, next: Random): Float32Array {
  const base = 48 + 4 * next();
  const partials = Array.from({ length: 40 }, (_, k) => ({
    step: (2 * Math.PI * base * (k + 1)) / 16_000,
    phase: 2 * Math.PI * next(),
    loudness: (0.5 + next()) / (k + 1) ** 0.8,
  }));
  let rumble = 0;
  return Float32Array.from({ length }, (_, i) => {
    rumble = 0.9 * rumble + 0.3 * normal(next);
    const tone = partials.reduce((sum, p) => sum + p.loudness * Math.sin(p.step * i + p.phase), 0);
    return tone * (1 + 0.1 * Math.sin((2 * Math.PI * 1.3 * i) / 16_000)) + 0.5 * rumble;
  });
}

/** A hammer on an anvil, two blows a second: a knock and four ringing modes. */
export function hammering(length: number, next: Random): Float32Array {
  const sound = Float32Array.from({ length }, () => 0.02 * normal(next));
  const modes = [420, 1130, 2350, 3900].map((hertz) => hertz * (0.8 + 0.4 * next()));
  for (let at = 6000 * next(); at < length; at += 5000 + 7000 * next()) {
    const strength = 0.5 + next();
    for (let i = 0; i < 4800 && at + i < length; i++) {
      const t = i / 16_000;
      const ring = modes.reduce(
        (sum, hertz, k) => sum + Math.sin(2 * Math.PI * hertz * t) * Math.exp(-t * (25 + 20 * k)),
        0,
      );
      const blow = ring + 2 * normal(next) * Math.exp(-300 * t);
      const place = Math.floor(at) + i;
      sound[place] = (sound[place] ?? 0) + strength * blow;
    }
  }
  return sound;
}

/** Several people at once: the given pieces of speech, laid over each other again and again. */
export function babble(
  length: number,
  next: Random,
  pieces: readonly Int16Array[],
  people = 5,
): Float32Array {
  const sound = new Float32Array(length);
  for (let person = 0; person < people; person++) {
    let at = -Math.floor(16_000 * next());
    while (at < length) {
      const piece = pieces[Math.floor(next() * pieces.length)] ?? new Int16Array(0);
      const scale = 1 / Math.max(1, activeLevel(piece));
      for (let i = Math.max(0, -at); i < piece.length && at + i < length; i++) {
        sound[at + i] = (sound[at + i] ?? 0) + scale * (piece[i] ?? 0);
      }
      at += piece.length + Math.floor(6000 * next());
    }
  }
  return sound;
}

export function level(samples: ArrayLike<number>): number {
  let energy = 0;
  for (let i = 0; i < samples.length; i++) energy += (samples[i] ?? 0) ** 2;
  return Math.sqrt(energy / Math.max(1, samples.length));
}

/** Root mean square over the parts that sound: pauses do not count (as in ITU-T P.56, simplified). */
export function activeLevel(samples: Int16Array): number {
  const parts: number[] = [];
  for (let at = 0; at + 320 <= samples.length; at += 320) {
    parts.push(level(samples.subarray(at, at + 320)));
  }
  const loudest = Math.max(0, ...parts);
  return level(parts.filter((part) => part > 0.1 * loudest));
}

/** Sound plus noise, the noise `decibels` below `speechLevel`. */
export function mixed(
  sound: Int16Array,
  noise: Float32Array,
  decibels: number,
  speechLevel: number,
): Int16Array {
  const scale = speechLevel / level(noise) / 10 ** (decibels / 20);
  return sound.map((sample, i) =>
    Math.max(-32_768, Math.min(32_767, Math.round(sample + scale * (noise[i] ?? 0)))),
  );
}
