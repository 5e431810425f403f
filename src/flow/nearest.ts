/** The tail of a fault's sentence: the name somebody probably meant. */

import { englishLanguage, type Worded, worded, wordedIn } from '../texts/index.ts';
import { nearestName } from '../trade/index.ts';

/** ` Did you mean "guard"?`, or an empty string when nothing is near; in English. */
export function suggestion(name: string, names: Iterable<string>): string {
  return wordedIn(englishLanguage, suggested(name, names));
}

/** The same, for a sentence that another language may tell. */
export function suggested(name: string, names: Iterable<string>): Worded {
  const near = nearestName(name, [...names]);
  return near === undefined ? '' : worded` Did you mean "${near}"?`;
}

/** "a, b, c" for a list of what there is; long lists are cut. */
export function listed(names: Iterable<string>, most = 12): string {
  const all = [...names];
  const tail = all.length > most ? `, and ${all.length - most} more` : '';
  return all.length === 0 ? 'none' : `${all.slice(0, most).join(', ')}${tail}`;
}
