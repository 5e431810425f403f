/** A block on the sheet, in a file and in words. */
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { projectionSymbol } from '../../../../src/screens/drawing/block/symbol.ts';
import { drawingSvg } from '../../../../src/screens/drawing/drawing-svg.ts';
import { drawingWords } from '../../../../src/screens/drawing/drawing-words.ts';
import { PieceDrawing } from '../../../../src/screens/drawing/PieceDrawing.tsx';
import { PieceSheet } from '../../../../src/screens/drawing/PieceSheet.tsx';
import { sheetSvg } from '../../../../src/screens/drawing/sheet.ts';
import { german } from '../../../../src/texts/de/index.ts';
import { HINGE_PIN } from '../parts.ts';
import { JIG, KEEPER } from './blocks.ts';

const state = {
  top: { state: 'done', reading: { value: 15.98, verdict: 'within' } },
  slot: { state: 'now', widthReading: { value: 10.02 } },
} as const;
const head = {
  title: 'Keeper',
  note: 'Not to scale, mm',
  fields: [{ label: 'Flow', value: 'latch-keeper' }],
};

const marks = (svg: string) => [...svg.matchAll(/ d="([^"]+)"/g)].map((match) => match[1]);
const count = (text: string, part: string) => text.split(part).length - 1;

describe('a block in a file', () => {
  const svg = drawingSvg(KEEPER, state, { title: 'Keeper' });

  it('has the same marks as on the page', () => {
    const page = render(<PieceDrawing piece={KEEPER} state={state} title="Keeper" />);
    expect(marks(page)).toEqual(marks(svg));
    expect(marks(svg).length).toBeGreaterThan(30);
  });

  it('tells in words what it shows', () => {
    expect(svg).toContain('Drawing in several views, 60 × 25 × 18 mm.');
    expect(svg).toContain('16 ±0.2 high: done, measured 15.98 within.');
    expect(svg).toContain('slot 10 wide, 6 ±0.1 deep: now, measured 10.02.');
    const jig = drawingSvg(JIG, {}, { title: 'Jig' });
    expect(jig).toContain('shoulder 6 wide, 5 deep: not cut yet.');
    expect(jig).toContain('Ø6.8 × 12 deep: not cut yet. Ø5 through: not cut yet.');
    expect(jig).toContain('80 long: not cut yet.');
  });

  // Source: from memory: ISO 128-2, line 02: dash 12, gap 3 line breadths.
  it('dashes hidden edges', () => {
    const [, breadth = '', dashes = ''] =
      drawingSvg(KEEPER, {}, { title: 'Keeper' }).match(
        /class="line-hidden"[^>]*stroke-width="([\d.]+)"[^>]*stroke-dasharray="([\d. ]+)"/,
      ) ?? [];
    const parts = dashes.split(' ').map((part) => Number(part) / Number(breadth));
    expect(parts.map((part) => Math.round(part))).toEqual([12, 3]);
  });

  it('speaks German when given its words', () => {
    const told = drawingSvg(KEEPER, state, { title: 'Halter', words: drawingWords(german) });
    const texts = told.replace(/<[^>]*>/g, ' ');
    expect(texts).toContain('Nut 10 breit, 6 ±0,1 tief: jetzt, gemessen 10,02.');
    expect(texts).not.toMatch(/\b(?:slot|deep|wide|high|front|left|now|done|from)\b|\d\.\d/);
  });
});

describe('a block on the sheet', () => {
  it('is printed as it is exported', () => {
    const page = render(<PieceSheet piece={KEEPER} state={state} head={head} />);
    expect(marks(page)).toEqual(marks(sheetSvg(KEEPER, state, head)));
  });

  it('has the symbol of projection, which one view does not need', () => {
    const symbol = projectionSymbol({ x: 0, y: 0 }, 100).length;
    const lines = (svg: string) => count(svg.slice(svg.lastIndexOf('</g>')), '<path ');
    expect(lines(sheetSvg(KEEPER, state, head))).toBe(symbol);
    expect(lines(sheetSvg(HINGE_PIN, {}, head))).toBe(0);
  });

  it('is made smaller rather than leave the border', () => {
    const tall = { ...KEEPER, stock: { ...KEEPER.stock, length: 20, width: 90 } };
    const [, x = '', y = '', grow = ''] =
      sheetSvg(tall, state, head).match(/translate\(([\d.]+) ([\d.]+)\) scale\(([\d.]+)\)/) ?? [];
    expect(Number(grow)).toBeLessThan(1);
    expect(Number(x)).toBeGreaterThan(200);
    expect(Number(y)).toBeGreaterThan(100);
  });
});

// Source: from memory: ISO 5456-2, annex A: the cone from its side at the left, its small end away from the two circles.
describe('the symbol of first-angle projection', () => {
  const paths = projectionSymbol({ x: 0, y: 0 }, 100).map(({ attributes }) =>
    [...String(attributes.d).matchAll(/([-\d.]+) ([-\d.]+)/g)].map(
      ([, x, y]) => [Number(x), Number(y)] as const,
    ),
  );
  const [cone = [], inner = [], outer = []] = paths;
  const reach = (points: readonly (readonly [number, number])[]) =>
    [Math.min(...points.map(([x]) => x)), Math.max(...points.map(([x]) => x))] as const;
  const high = (points: readonly (readonly [number, number])[]) => {
    const ys = points.map(([, y]) => y);
    return Math.max(...ys) - Math.min(...ys);
  };

  it('has a cone whose small end, half as high, is at the left', () => {
    const [left, right] = reach(cone);
    expect(high(cone.filter(([x]) => x === left))).toBe(50);
    expect(high(cone.filter(([x]) => x === right))).toBe(100);
    expect(right - left).toBe(100);
  });

  it('has both its ends as circles at the right, each as high as its end', () => {
    expect(high(inner)).toBeCloseTo(50, 1);
    expect(high(outer)).toBeCloseTo(100, 1);
    expect(reach(outer)[0]).toBeGreaterThan(reach(cone)[1]);
    expect(reach(inner)[0] + reach(inner)[1]).toBeCloseTo(reach(outer)[0] + reach(outer)[1], 1);
  });
});
