import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../../src/screens/drawing/text-width.ts';
import { DRILL_ART } from '../../../src/screens/machine/DrillPicture.tsx';
import { GRINDER_ART } from '../../../src/screens/machine/GrinderPicture.tsx';
import { LATHE_ART } from '../../../src/screens/machine/LathePicture.tsx';
import { MachinePicture, PARTS_BY_KIND } from '../../../src/screens/machine/MachinePicture.tsx';
import { MILL_ART } from '../../../src/screens/machine/MillPicture.tsx';
import { partWords } from '../../../src/screens/machine/part-words.ts';
import type { Box, PartArt } from '../../../src/screens/machine/picture.ts';
import { LEAST_TOUCH, PICTURE_WIDTH, STOP_RED } from '../../../src/screens/machine/picture.ts';
import { SAW_ART } from '../../../src/screens/machine/SawPicture.tsx';
import { LanguageOfPage } from '../../../src/screens/use-say.ts';
import { german } from '../../../src/texts/de/index.ts';
import { englishLanguage } from '../../../src/texts/index.ts';

const ART: readonly (readonly [keyof typeof PARTS_BY_KIND, readonly PartArt<string>[]])[] = [
  ['lathe', LATHE_ART],
  ['mill', MILL_ART],
  ['drill-press', DRILL_ART],
  ['grinder', GRINDER_ART],
  ['band-saw', SAW_ART],
];
const GUARDS = ['open', 'closed'] as const;

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

describe.each(ART)('the picture of a %s', (kind, art) => {
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

  it.each([englishLanguage, german])('has words for every part it draws, in $name', (language) => {
    expect(art.map((part) => part.id).sort()).toEqual([...PARTS_BY_KIND[kind]].sort());
    for (const { id } of art) {
      const { name = '', what = '' } = partWords(kind, id, language) ?? {};
      expect(name).toMatch(/^\p{Lu}/u);
      expect(what).toMatch(/^\p{Lu}[^.]+\.$/u);
    }
  });

  // Source: from memory: IEC 60204-1, colour of emergency stop actuators.
  it('is red nowhere but on the emergency stop, and has no other colour of its own', () => {
    const drawing = render(<MachinePicture kind={kind} title="machine" />);
    expect(drawing.match(/#[0-9a-f]{3,8}\b/gi)).toEqual([STOP_RED]);
    const stop = drawing.slice(drawing.indexOf('data-part="emergency-stop"'));
    expect(stop.split('data-part=')[1]).toContain(STOP_RED);
  });

  it.each([englishLanguage, german])(
    'keeps the name of each part inside its width, in $name',
    (language) => {
      for (const { id } of art) {
        const drawing = render(
          <LanguageOfPage.Provider value={language}>
            <MachinePicture kind={kind} title="machine" lit={id} direction="away-from-chuck" />
          </LanguageOfPage.Provider>,
        );
        const [, x = 'NaN', size = '0', name = ''] =
          drawing.match(/<text x="([\d.]+)" y="36" font-size="([\d.]+)"[^>]*>([^<]+)</) ?? [];
        expect(Number(size), id).toBeGreaterThanOrEqual(30);
        const half = textWidth(name, Number(size), true) / 2;
        expect(Number(x) - half, id).toBeGreaterThanOrEqual(0);
        expect(Number(x) + half, id).toBeLessThanOrEqual(PICTURE_WIDTH);
      }
    },
  );

  it.each([englishLanguage, german])('has no two parts of one name, in $name', (language) => {
    const names = art.map(({ id }) => partWords(kind, id, language)?.name);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('a part or a machine that there is none of', () => {
  it('has no words and no picture', () => {
    expect(partWords('lathe', 'knee', englishLanguage)).toBeUndefined();
    expect(partWords('way', 'left', englishLanguage)).toBeUndefined();
    expect(partWords('shaper', 'ram', englishLanguage)).toBeUndefined();
    expect(render(<MachinePicture kind="shaper" title="Shaper" />)).toBe('');
  });

  it('lights nothing when the part is not one of this machine', () => {
    expect(render(<MachinePicture kind="mill" lit="tailstock" title="Mill" />)).not.toContain(
      'part-lit',
    );
  });
});
