import { expect, it } from 'vitest';
import { readCard } from '../../../src/flow/index.ts';
import { plateOf } from '../../../src/screens/toolroom/plate.ts';
import { german } from '../../../src/texts/de/index.ts';
import { englishLanguage, type Language } from '../../../src/texts/index.ts';
import { textOf } from '../../flow/shipped.ts';

function plate(name: string, more: object = {}, language: Language = englishLanguage) {
  const text = JSON.stringify({ ...JSON.parse(textOf(`machines/${name}.json`)), ...more });
  const read = readCard(name, text);
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join(' '));
  const lines = plateOf(read.value, language).map(({ name: of, value }) => [of, value]);
  return Object.fromEntries(lines.map(([of, value]) => [of, value?.replaceAll('\u00a0', ' ')]));
}

it('a lathe tells its speeds, its chuck and how its cross dial reads', () => {
  expect(plate('metric-lathe')).toEqual({
    plateSpeeds: '8, from 70 rpm to 2000 rpm',
    plateChuck: '1600 rpm',
    plateDials: 'millimetres',
    plateCross: 'the change of diameter',
  });
});

it('a lathe tells also what its card does not give', () => {
  const told = plate('metric-lathe', { chuckLimit: undefined, crossReads: undefined });
  expect([told.plateChuck, told.plateCross]).toEqual(['not given', 'not given']);
});

it('a grinder has one speed and the mark of its wheels, and neither chuck nor cross dial', () => {
  expect(plate('metric-grinder')).toEqual({
    plateSpeeds: '2850 rpm',
    plateWheel: '3340 rpm',
    plateDials: 'millimetres',
  });
});

it('a mill has the mark of the chuck that holds its cutter', () => {
  expect(plate('metric-mill').plateCutterChuck).toBe('2000 rpm');
});

it('a band saw tells its speeds in metres or in feet a minute, as its card is written', () => {
  expect(plate('metric-band-saw')).toEqual({
    plateSpeeds: '5, from 20 m/min to 90 m/min',
    plateDials: 'millimetres',
  });
  const inch = { units: 'inch', speeds: ['80 ft/min', '295 ft/min'] };
  expect(plate('metric-band-saw', inch).plateSpeeds).toBe('2, from 80 ft/min to 295 ft/min');
});

it('is told in German', () => {
  expect(plate('metric-grinder', {}, german).plateSpeeds).toBe('2850 1/min');
  expect(plate('metric-drill-press', {}, german).plateSpeeds).toBe(
    '6, von 280 1/min bis 2800 1/min',
  );
});
