import { describe, expect, test } from 'vitest';
import {
  nameOf,
  readMaterialDraft,
  textsOf,
} from '../../../src/screens/toolroom/material-draft.ts';
import { englishLanguage, sayIn, shopTexts } from '../../../src/texts/index.ts';
import { materialTable, shopMaterialFaults } from '../../../src/trade/index.ts';

const say = sayIn(englishLanguage, shopTexts);
const [steel] = materialTable;
if (!steel) throw new Error('The table is empty.');
const written = { ...textsOf(steel, false), title: 'Yard steel', source: 'our own trials' };
const read = (more: Record<string, string>, taken: readonly string[] = []) =>
  readMaterialDraft({ ...written, ...more }, say, taken);

describe('a material written in the form', () => {
  test.each(materialTable.map((row) => [row.name, row] as const))(
    'comes back as it was: %s',
    (_name, row) => {
      const again = readMaterialDraft(
        { ...textsOf(row, false), title: 'Ours', source: 's' },
        say,
        [],
      );
      if (!again.ok) throw new Error(JSON.stringify(again.faults));
      const { speeds, modulus, expansion, density, force, cutDry, iso } = row;
      expect(again.row).toMatchObject({ speeds, modulus, expansion, density, cutDry, iso });
      expect(again.row.force).toEqual(force);
      expect(shopMaterialFaults([again.row])).toEqual([]);
    },
  );

  test('takes units behind a speed', () => {
    const fast = read({ 'turn.hss': '90 ft/min' });
    // 90 × 0.3048, exact by the definition of the foot.
    expect(fast.ok && fast.row.speeds.turn[0]).toBeCloseTo(27.432, 9);
  });

  test.each([
    [{ density: '8' }, 'density', 'Density: "8" is no number from 100 to 25000 kg/m³.'],
    [{ 'turn.hss': '' }, 'turn.hss', 'Write Turning with high-speed steel.'],
    [{ kc: '' }, 'kc', 'Write kc1.1 and mc, or leave both empty.'],
    [{ source: ' ' }, 'source', 'Write Where the numbers come from.'],
    [{ title: '--' }, 'title', 'Write a name with at least one letter.'],
    [
      { title: 'Copper' },
      'title',
      'There is a material "copper" already; give yours another name.',
    ],
  ])('with %j is refused beside %s', (more, field, says) => {
    const refused = read(more as Record<string, string>);
    expect(refused.ok ? {} : refused.faults).toEqual({ [field]: says });
  });

  test('gets a name out of its title, whatever its letters', () => {
    expect(nameOf('Gärtner’s Messing 2')).toBe('gartner-s-messing-2');
  });
});
