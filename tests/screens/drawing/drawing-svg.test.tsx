import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { drawingSvg, escaped } from '../../../src/screens/drawing/drawing-svg.ts';
import { ENGLISH_DRAWING } from '../../../src/screens/drawing/drawing-words.ts';
import { PieceDrawing } from '../../../src/screens/drawing/PieceDrawing.tsx';
import { PieceSheet } from '../../../src/screens/drawing/PieceSheet.tsx';
import { sheetSvg } from '../../../src/screens/drawing/sheet.ts';
import { HINGE_PIN } from './parts.ts';

const state = { shank: { state: 'done', reading: { value: 20.03, verdict: 'rework' } } } as const;
const head = {
  title: 'Gate hinge pin <3>',
  note: 'Not to scale, mm',
  fields: [
    { label: 'Flow', value: 'gate-hinge-pin' },
    { label: 'Version', value: '3' },
    { label: 'Operator', value: 'R. Weld & Sons' },
    { label: 'Date', value: '2026-11-25' },
  ],
};

/** Names of elements opened and not closed again, by the rules of XML. */
function unclosed(xml: string): readonly string[] {
  const open: string[] = [];
  for (const [, close, name = '', empty] of xml.matchAll(/<(\/?)([a-z]+)[^<>]*?(\/?)>/g)) {
    if (empty) continue;
    if (!close) open.push(name);
    else if (open.pop() !== name) return [`</${name}>`];
  }
  return open;
}

const marks = (svg: string) => [...svg.matchAll(/ d="([^"]+)"/g)].map((match) => match[1]);

describe('the drawing as a file', () => {
  const svg = drawingSvg(HINGE_PIN, state, { title: 'Pin & "head"' });

  it('is one well-formed SVG element with its own size', () => {
    expect(unclosed(svg)).toEqual([]);
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" width="720" height="\d+"/);
  });

  it('has the same marks as the drawing on the page', () => {
    const page = render(<PieceDrawing piece={HINGE_PIN} state={state} title="Pin" />);
    expect(marks(page)).toEqual(marks(svg));
    expect(marks(svg).length).toBeGreaterThan(40);
  });

  it('tells in words what it shows', () => {
    expect(svg).toContain('<title>Pin &amp; &quot;head&quot;</title>');
    expect(svg).toContain('Ø19.98–20.00: done, measured 20.03 rework.');
    expect(svg).toContain('Ø28: not cut yet.');
  });

  it('escapes what could end a tag and drops what XML cannot hold', () => {
    expect(escaped('<b>"a" & \u0007b')).toBe('&lt;b&gt;&quot;a&quot; &amp; b');
  });
});

describe('the lines', () => {
  const svg = drawingSvg(HINGE_PIN, state, { title: 'Pin' });
  const breadth = (pen: string) =>
    Number(svg.match(new RegExp(`class="line-${pen}"[^>]*stroke-width="([\\d.]+)"`))?.[1]);

  // Source: from memory: ISO 128-2, line breadths of one group stand 2:1.
  it('are twice as broad firm as thin', () => {
    expect(breadth('firm') / breadth('thin')).toBeCloseTo(2, 1);
  });

  // Source: from memory: ISO 128-2, line 05: long dash 24, gap 3, dot 0.5 line breadths.
  it('show the stock in long dashes with two dots', () => {
    const dashes = svg.match(/class="line-stock"[^>]*stroke-dasharray="([\d. ]+)"/)?.[1] ?? '';
    const parts = dashes.split(' ').map((part) => Number(part) / breadth('stock'));
    expect(parts).toHaveLength(6);
    expect(parts.map((part) => Math.round(part * 2) / 2)).toEqual([24, 3, 0.5, 3, 0.5, 3]);
  });
});

describe('the sheet', () => {
  const sheet = sheetSvg(HINGE_PIN, state, head);

  // Source: ISO 216: A4 is 210 by 297 mm.
  it('is an A4 sheet, landscape, with every field of the title block', () => {
    expect(sheet).toContain('width="297mm" height="210mm"');
    expect(unclosed(sheet)).toEqual([]);
    for (const { label, value } of head.fields) {
      expect(sheet).toContain(`>${escaped(label)}<`);
      expect(sheet).toContain(`>${escaped(value)}<`);
    }
  });

  it('prints what it exports', () => {
    const page = render(<PieceSheet piece={HINGE_PIN} state={state} head={head} />);
    expect(marks(page)).toEqual(marks(sheet));
  });

  it('shrinks a drawing that would reach the title block', () => {
    const many = Array.from({ length: 24 }, (_, index) => ({
      kind: 'cylinder' as const,
      id: `step-${index}`,
      from: index * 5,
      to: index * 5 + 5,
      diameter: 10 + index,
    }));
    const tall = sheetSvg({ stock: { diameter: 40, length: 130 }, features: many }, {}, head);
    const grow = Number(tall.match(/scale\(([\d.]+)\)/)?.[1]);
    expect(grow).toBeLessThan(1);
    expect(grow).toBeGreaterThan(0.2);
  });

  it('speaks another language when given its words', () => {
    const words = { ...ENGLISH_DRAWING, decimal: ',', deep: 'tief' };
    expect(sheetSvg(HINGE_PIN, {}, head, words)).toContain('Ø19,98–20,00');
    expect(sheetSvg(HINGE_PIN, {}, head, words)).toContain('30 tief');
  });
});
