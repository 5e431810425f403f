/** Questions an ear that only knows listed phrases can hear on the Slate: the sizes most often asked for. */

import { englishLanguage, type Language } from '../texts/index.ts';
import { sayNumber } from '../words/index.ts';

const materials = ['mild steel', 'stainless', 'cast iron', 'aluminium', 'brass'];
const diameters = [3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 40, 50];
const threads = [3, 4, 5, 6, 8, 10, 12, 16, 20, 24];

/** English alone: an ear for another language hears freely. */
export function slatePhrases({ spoken }: Language = englishLanguage): readonly string[] {
  if (spoken) return [];
  const plain = (value: number) => sayNumber(value, '', 0).replaceAll('-', ' ');
  const bySize = diameters.flatMap((diameter) =>
    materials.flatMap((material) =>
      ['speed', 'drill speed', 'drill feed'].flatMap((what) =>
        ['', 'millimetres '].map((unit) => `${what} for ${plain(diameter)} ${unit}${material}`),
      ),
    ),
  );
  const byThread = threads.flatMap((thread) =>
    ['tapping drill', 'wires'].map((what) => `${what} for m ${plain(thread)}`),
  );
  const morse = [0, 1, 2, 3, 4, 5, 6].map((number) => `morse taper ${plain(number)}`);
  return [...bySize, ...byThread, ...morse];
}
