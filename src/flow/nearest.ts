/** The tail of a fault's sentence: the name somebody probably meant. */

import { nearestName } from '../trade/index.ts';

/** ` Did you mean "guard"?`, or an empty string when nothing is near. */
export function suggestion(name: string, names: Iterable<string>): string {
  const near = nearestName(name, [...names]);
  return near === undefined ? '' : ` Did you mean "${near}"?`;
}

/** "a, b, c" for a list of what there is; long lists are cut. */
export function listed(names: Iterable<string>, most = 12): string {
  const all = [...names];
  const tail = all.length > most ? `, and ${all.length - most} more` : '';
  return all.length === 0 ? 'none' : `${all.slice(0, most).join(', ')}${tail}`;
}
