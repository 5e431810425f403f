/** A shop's own materials answer like the table's, and leave the table alone. */

import { describe, expect, it } from 'vitest';
import {
  answerRule,
  findMaterial,
  type Material,
  type RuleValues,
  rules,
  shopMaterialFaults,
  withShopMaterials,
} from '../../../src/trade/index.ts';
import { faultOf } from '../asking.ts';

function ownBrass(change: Partial<Material> = {}): Material {
  const brass = findMaterial('free-cutting-brass');
  if (brass === undefined) throw new Error('the table has no brass');
  const speeds = { ...brass.speeds, turn: [60, 120, 120] as const };
  return { ...brass, name: 'gate-brass', title: 'brass from the gate works', speeds, ...change };
}

function ask(shop: readonly Material[], name: string, values: RuleValues) {
  const rule = withShopMaterials(rules, shop).find((one) => one.name === name);
  if (rule === undefined) throw new Error(name);
  return answerRule(rule, values);
}

describe("a shop's own material", () => {
  const turned = { material: 'gate-brass', operation: 'turn' };

  it("answers with the shop's numbers", () => {
    const answer = ask([ownBrass()], 'cutting-speed', turned);
    expect(answer).toMatchObject({ ok: true, value: 60 });
    expect(answer.ok && answer.working).toContain('brass from the gate works');
  });

  it.each([
    ['drill-feed', { diameter: 10, material: 'gate-brass' }],
    ['peck-plan', { diameter: 10, depth: 60, material: 'gate-brass' }],
    ['specific-force', { chipThickness: 0.2, material: 'gate-brass' }],
    ['bend-in-chuck', { force: 10, length: 50, diameter: 10, material: 'gate-brass' }],
    ['thermal-growth', { length: 100, temperature: 30, material: 'gate-brass' }],
    ['parting-speed', { diameter: 20, material: 'gate-brass' }],
  ])('is known to %s', (name, values) => {
    expect(ask([ownBrass()], name, values).ok).toBe(true);
  });

  it('stays unknown to the table before and after', () => {
    ask([ownBrass()], 'cutting-speed', turned);
    expect(faultOf('cutting-speed', turned)).toContain('material came as "gate-brass"');
  });

  it('leaves the materials of the table as they are', () => {
    const answer = ask([ownBrass()], 'cutting-speed', { ...turned, material: 'copper' });
    expect(answer).toMatchObject({ ok: true, value: 35 });
  });

  it.each([
    [{ name: 'copper' }, 'There is a material "copper" already'],
    [{ name: 'Gate Brass' }, 'is no name here; use small letters'],
    [{ modulus: 96 }, 'gate-brass: the modulus is 96; it must lie from 100'],
    [{ expansion: 0 }, 'the expansion is 0'],
    [{ force: { kc: 5, mc: 0.2 } }, 'kc is 5; it must lie from 50'],
  ] as const)('with %j is refused: %s', (change, says) => {
    expect(shopMaterialFaults([ownBrass(change)]).join(' ')).toContain(says);
  });

  it('is without faults when it is right, and counts a doubled name as one', () => {
    expect(shopMaterialFaults([ownBrass()])).toEqual([]);
    expect(shopMaterialFaults([ownBrass(), ownBrass()])).toHaveLength(1);
  });
});
