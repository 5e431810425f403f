/** Whether the page of the Bench has one column, followed as the device is turned. */

import { useEffect, useState } from 'preact/hooks';

/** As in styles/bench.css. */
export const TWO_COLUMNS = '(orientation: landscape) and (min-width: 56rem)';

export function useOneColumn(): boolean {
  const [isOne, setOne] = useState(() => !matchMedia(TWO_COLUMNS).matches);
  useEffect(() => {
    const media = matchMedia(TWO_COLUMNS);
    const follow = () => setOne(!media.matches);
    media.addEventListener('change', follow);
    return () => media.removeEventListener('change', follow);
  }, []);
  return isOne;
}
