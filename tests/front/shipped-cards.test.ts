import { expect, it } from 'vitest';
import { shippedCards, shippedFlows } from '../../src/front/texts.ts';
import { englishLanguage } from '../../src/texts/index.ts';

it('machine cards stand in the order of the Shelf, metric before inch: the first is the one most begin with', async () => {
  const cards = await shippedCards(englishLanguage);
  expect(cards.map(({ id }) => id)).toEqual([
    'metric-lathe',
    'inch-lathe',
    'metric-band-saw',
    'metric-mill',
    'inch-mill',
    'metric-grinder',
    'metric-drill-press',
  ]);
  const kinds = [...new Set(cards.map(({ machineKind }) => machineKind))];
  expect(kinds).toEqual([...new Set(shippedFlows().map(({ machineKind }) => machineKind))]);
});
