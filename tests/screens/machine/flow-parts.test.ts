import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isPictured, PARTS_BY_KIND } from '../../../src/screens/machine/MachinePicture.tsx';

interface Pointing {
  readonly id?: string;
  readonly part?: unknown;
  readonly items?: readonly Pointing[];
}

interface FlowOrKind {
  readonly id: string;
  readonly machineKind?: string;
  readonly steps?: readonly Pointing[];
  readonly facts?: readonly Pointing[];
  readonly walks?: readonly Pointing[];
  readonly parts?: readonly { readonly id: string }[];
}

const folders = ['../../../flows/', '../../../flows/kinds/'].map(
  (folder) => new URL(folder, import.meta.url),
);
const files = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => [name, new URL(name, folder)] as const),
);

const kinds = files.filter(([, url]) => url.pathname.includes('/kinds/'));

/** Everything that points at a part of the machine, walks opened up. */
function pointing(file: FlowOrKind): readonly Pointing[] {
  const all = [...(file.steps ?? []), ...(file.facts ?? []), ...(file.walks ?? [])];
  return all.flatMap((one) => [one, ...(one.items ?? [])]);
}

describe('the parts that flows and machine kinds point at', () => {
  it.each(files)('are all in the picture: %s', (_, url) => {
    const file: FlowOrKind = JSON.parse(readFileSync(url, 'utf8'));
    const kind = file.machineKind ?? file.id;
    expect(isPictured(kind)).toBe(true);
    const parts: readonly string[] = isPictured(kind) ? PARTS_BY_KIND[kind] : [];
    const unknown = pointing(file).filter(
      ({ part }) => part !== undefined && !parts.includes(String(part)),
    );
    expect(unknown.map(({ id, part }) => `${id}: ${part}`)).toEqual([]);
  });

  it('are named by every step of the hinge pin that is done at the lathe', () => {
    const url = new URL('../../../flows/gate-hinge-pin.json', import.meta.url);
    const { steps = [] }: FlowOrKind = JSON.parse(readFileSync(url, 'utf8'));
    const bare = steps.filter(({ part }) => part === undefined).map(({ id }) => id);
    // Words to the person, and what is done at the bench with the piece in the hand.
    const away = ['begin', 'protect', 'wrong-card', 'deburr', 'inspect-shank'];
    expect(bare).toEqual([...away, 'lost-in-chuck', 'scrap', 'record']);
  });

  it.each(kinds)('are the picture of the kind whole, each with a line of its own: %s', (_, url) => {
    const { id, parts = [] }: FlowOrKind = JSON.parse(readFileSync(url, 'utf8'));
    const pictured: readonly string[] = isPictured(id) ? PARTS_BY_KIND[id] : [];
    expect(parts.map((part) => part.id).toSorted()).toEqual(pictured.toSorted());
  });

  it('are found in every file there is', () => {
    expect(files.length).toBeGreaterThan(1);
  });
});
