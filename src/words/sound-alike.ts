/** How alike two words sound, roughly: spelling turned into a row of sounds, and a distance between rows. */

/**
 * Spellings and their sounds, tried in order. Capitals stand for sounds that one small letter cannot show: X sh, C ch,
 * T th, N ng; A, I, O, U, Y the long vowels of day, see, go, new, my.
 */
const SOUNDS: readonly (readonly [RegExp, string])[] = [
  [/^eye$|^i$|igh|(?<=^[^aeiou]*)y$|i(?=[^aeiou]e$)/g, 'Y'],
  [/ee|ea|ie(?!$)/g, 'I'],
  [/ai|ay|ei|ey|a(?=[^aeiou]e$)/g, 'A'],
  [/oa|ow(?=n?$)|o(?=[^aeiou]e$)|o(?=ld)/g, 'O'],
  [/oo|ew|u(?=[^aeiou]e$)/g, 'U'],
  [/tch|ch/g, 'C'],
  [/sh|ti(?=on)|ci(?=a|o)/g, 'X'],
  [/ph/g, 'f'],
  [/th/g, 'T'],
  [/ng/g, 'N'],
  [/^kn|^gn/g, 'n'],
  [/^wr/g, 'r'],
  [/wh/g, 'w'],
  [/ck/g, 'k'],
  [/qu/g, 'kw'],
  [/x/g, 'ks'],
  [/c(?=[eiyIY])/g, 's'],
  [/c/g, 'k'],
  [/dge|g(?=e$)/g, 'j'],
  [/mb$/g, 'm'],
  [/q/g, 'k'],
  [/(?<=[^aeiou].*)e$/g, ''],
  [/(.)\1+/g, '$1'],
];

const VOWEL = /[aeiouyAIOUY]/;

/** Sounds made at nearly the same place in the mouth: the commonest mishearings in noise. */
const NEIGHBOURS =
  'pb td kg fv sz CX Cj Tf Td Tt Tv mn nN sX lr wr fs sT iI ei eA ae aO oO ou uU ao yI iy';
const near = new Set(NEIGHBOURS.split(' ').flatMap((pair) => [pair, `${pair[1]}${pair[0]}`]));

const heardAs = new Map<string, string>();
const MOST_KEPT = 4000;

/** The word as a row of sounds: "next" and "necks" become nearly the same. */
function soundsOf(word: string): string {
  const kept = heardAs.get(word);
  if (kept !== undefined) return kept;
  let row = word
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace(/(?<!i)gh/g, '');
  for (const [spelt, sound] of SOUNDS) row = row.replace(spelt, sound);
  if (heardAs.size >= MOST_KEPT) heardAs.clear();
  heardAs.set(word, row);
  return row;
}

function swap(a: string, b: string): number {
  if (a === b) return 0;
  return near.has(a + b) ? 0.5 : 1;
}

function drop(sound: string): number {
  return sound === 'h' || VOWEL.test(sound) ? 0.6 : 0.9;
}

function distance(a: string, b: string): number {
  let row = [0];
  for (const sound of b) row.push((row.at(-1) ?? 0) + drop(sound));
  for (const sound of a) {
    const next = [(row[0] ?? 0) + drop(sound)];
    for (let at = 0; at < b.length; at++) {
      const other = b[at] ?? '';
      next.push(
        Math.min(
          (row[at] ?? 0) + swap(sound, other),
          (row[at + 1] ?? 0) + drop(sound),
          (next[at] ?? 0) + drop(other),
        ),
      );
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}

const likeness = new Map<string, number>();

/** 1 for the same sounds, towards 0 for nothing in common. Words without a vowel ("bbc", "3") are alike only when equal. */
export function soundAlike(a: string, b: string): number {
  if (a === b) return 1;
  const pair = `${a} ${b}`;
  const kept = likeness.get(pair);
  if (kept !== undefined) return kept;
  const [left, right] = [soundsOf(a), soundsOf(b)];
  const longest = Math.max(left.length, right.length);
  const unsayable = !VOWEL.test(a) || !VOWEL.test(b);
  const alike = unsayable ? 0 : Math.max(0, 1 - distance(left, right) / longest);
  if (likeness.size >= MOST_KEPT) likeness.clear();
  likeness.set(pair, alike);
  return alike;
}

/** Do both begin with the same sound, a neighbouring one, or the same behind a lost h? */
export function startsAlike(a: string, b: string): boolean {
  const [left, right] = [soundsOf(a), soundsOf(b)].map((row) => row.replace(/^h/, ''));
  const [first, second] = [left?.[0] ?? '', right?.[0] ?? ''];
  return first === second || near.has(first + second);
}
