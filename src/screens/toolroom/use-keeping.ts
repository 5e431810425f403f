/** Keeps what a form holds and closes it, or tells why it was not kept. */

import { useState } from 'preact/hooks';
import { sentenceOf, shopTexts } from '../../texts/index.ts';
import { useLanguage, useSay } from '../use-say.ts';

/** @param onKept called once nothing was refused */
export function useKeeping(onKept: () => void) {
  const say = useSay(shopTexts);
  const language = useLanguage();
  const [refused, setRefused] = useState<readonly string[]>([]);

  /** @param keep gives the reasons for which it refuses; none when it has kept */
  async function keepBy(keep: () => Promise<readonly string[]>): Promise<void> {
    try {
      const found = await keep();
      setRefused(found);
      if (found.length === 0) onKept();
    } catch (error) {
      setRefused([say('notKept', { why: sentenceOf(error, language) })]);
    }
  }

  return { refused, keepBy };
}
