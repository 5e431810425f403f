import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../../src/screens/drawing/text-width.ts';
import { DRILL_ART } from '../../../src/screens/machine/DrillPicture.tsx';
import { GRINDER_ART } from '../../../src/screens/machine/GrinderPicture.tsx';
import { LATHE_ART } from '../../../src/screens/machine/LathePicture.tsx';
import {
  findPart,
  MachinePicture,
  PARTS_BY_KIND,
} from '../../../src/screens/machine/MachinePicture.tsx';
import { MILL_ART } from '../../../src/screens/machine/MillPicture.tsx';
import type { Box, PartArt } from '../../../src/screens/machine/picture.ts';
import { LEAST_TOUCH, PICTURE_WIDTH, STOP_RED } from '../../../src/screens/machine/picture.ts';
import { SAW_ART } from '../../../src/screens/machine/SawPicture.tsx';

const ART: readonly (readonly [keyof typeof PARTS_BY_KIND, readonly PartArt<string>[]])[] = [
  ['lathe', LATHE_ART],
  ['mill', MILL_ART],
  ['drill-press', DRILL_ART],
  ['pedestal-grinder', GRINDER_ART],
  ['band-saw', SAW_ART],
];
const GUARDS = ['open', 'closed'] as const;

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

describe.each(ART)('the picture of a %s', (kind, art) => {
  const facts: Readonly<Record<string, { readonly name: string; readonly what: string }>> =
    PARTS_BY_KIND[kind];

  // Source: WCAG 2.2, 2.5.8 Target Size (Minimum): 24 by 24 CSS pixels.
  it.each(GUARDS)('has touch areas of 24 px and more on a 360 px screen, guard %s', (guard) => {
    const scale = 360 / PICTURE_WIDTH;
    expect(LEAST_TOUCH * scale).toBeGreaterThanOrEqual(24);
    for (const part of art)
      for (const box of part.touch({ guard })) {
        expect(Math.min(box.width, box.height) * scale, part.id).toBeGreaterThanOrEqual(24);
        expect(box.x, part.id).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width, part.id).toBeLessThanOrEqual(PICTURE_WIDTH);
      }
  });

  it.each(GUARDS)('has no touch area on another, guard %s', (guard) => {
    const boxes = art.flatMap((part) => part.touch({ guard }).map((box) => ({ id: part.id, box })));
    const clashes = boxes.flatMap((a, index) =>
      boxes
        .slice(index + 1)
        .filter((b) => overlap(a.box, b.box))
        .map((b) => `${a.id} on ${b.id}`),
    );
    expect(clashes).toEqual([]);
  });

  it('has words for every part it draws and draws every part it has words for', () => {
    expect(art.map((part) => part.id).sort()).toEqual(Object.keys(facts).sort());
    for (const { name, what } of Object.values(facts)) {
      expect(name).toMatch(/^[A-Z]/);
      expect(what).toMatch(/^[A-Z][^.]+\.$/);
    }
  });

  // Source: from memory: IEC 60204-1, colour of emergency stop actuators.
  it('is red nowhere but on the emergency stop, and has no other colour of its own', () => {
    const drawing = render(<MachinePicture kind={kind} title="machine" />);
    expect(drawing.match(/#[0-9a-f]{3,8}\b/gi)).toEqual([STOP_RED]);
    const stop = drawing.slice(drawing.indexOf('data-part="emergency-stop"'));
    expect(stop.split('data-part=')[1]).toContain(STOP_RED);
  });

  it('keeps the name of each part inside its width', () => {
    for (const { id } of art) {
      const drawing = render(
        <MachinePicture kind={kind} title="machine" lit={id} direction="away-from-chuck" />,
      );
      const [, x = 'NaN', name = ''] =
        drawing.match(/<text x="([\d.]+)" y="36"[^>]*>([^<]+)</) ?? [];
      const half = textWidth(name, 38, true) / 2;
      expect(Number(x) - half, id).toBeGreaterThanOrEqual(0);
      expect(Number(x) + half, id).toBeLessThanOrEqual(PICTURE_WIDTH);
    }
  });

  it('has no two parts that answer to the same name', () => {
    const names = Object.values(PARTS_BY_KIND[kind]).flatMap((part: object) => [
      ...('name' in part ? [String(part.name).toLowerCase()] : []),
      ...('alsoCalled' in part && Array.isArray(part.alsoCalled) ? part.alsoCalled : []),
    ]);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('finding a part by name', () => {
  it('knows a part by its id, its name and the other names of the shop', () => {
    expect(findPart('lathe', 'the tailstock')?.id).toBe('tailstock');
    expect(findPart('lathe', 'Half nut lever')?.id).toBe('half-nut-lever');
    expect(findPart('lathe', 'saddle')?.id).toBe('carriage');
    expect(findPart('lathe', 'top slide')?.what).toContain('cross slide');
  });

  it('answers nothing for a part or machine it does not have', () => {
    expect(findPart('lathe', 'knee')).toBeUndefined();
    expect(findPart('shaper', 'ram')).toBeUndefined();
    expect(render(<MachinePicture kind="shaper" title="Shaper" />)).toBe('');
  });

  it('lights nothing when the part is not one of this machine', () => {
    expect(render(<MachinePicture kind="mill" lit="tailstock" title="Mill" />)).not.toContain(
      'part-lit',
    );
  });
});
