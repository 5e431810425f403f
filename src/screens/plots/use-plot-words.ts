/** The words of plots in the language of what is seen, unless others are given. */

import { useLanguage } from '../use-say.ts';
import { type PlotWords, plotWords } from './plot-words.ts';

export function usePlotWords(given: PlotWords | undefined): PlotWords {
  const language = useLanguage();
  return given ?? plotWords(language);
}
