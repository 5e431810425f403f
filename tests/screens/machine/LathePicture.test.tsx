import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { LATHE_ART, LathePicture } from '../../../src/screens/machine/LathePicture.tsx';
import type { LathePart } from '../../../src/screens/machine/lathe-parts.ts';
import { LATHE_PARTS } from '../../../src/screens/machine/lathe-parts.ts';
import { machineTexts } from '../../../src/texts/index.ts';

const html = (props: Partial<Parameters<typeof LathePicture>[0]> = {}) =>
  render(<LathePicture title="Lathe" {...props} />);

/** Left end of what can be touched of a part. */
function leftOf(id: LathePart): number {
  const art = LATHE_ART.find((part) => part.id === id);
  return Math.min(...(art?.touch({ guard: 'closed' }).map((box) => box.x) ?? []));
}

describe('the lathe picture', () => {
  // Source: common practice (any front view of a centre lathe), no source cited.
  it('stands as the operator sees it: headstock, chuck, work, tool, tool post, quill, tailstock, its wheel', () => {
    const order: LathePart[] = [
      'headstock',
      'chuck',
      'work',
      'tool',
      'tool-post',
      'quill',
      'tailstock',
      'tailstock-wheel',
    ];
    expect([...order].sort((a, b) => leftOf(a) - leftOf(b))).toEqual(order);
  });

  it('puts the tool edge, the work and the tailstock centre on one axis', () => {
    const drawing = html();
    const axis = 'M252 189'; // the work's outline: 189 to 235, its middle is 212
    expect(drawing).toContain(axis);
    expect(drawing).toContain('M444 212'); // point of the tailstock centre
    expect(drawing).toContain('Q321 212'); // nose of the tool
  });

  it('draws each part once', () => {
    const drawn = [...html().matchAll(/data-part="([^"]+)"/g)].map((match) => match[1] ?? '');
    expect([...drawn].sort()).toEqual([...LATHE_PARTS].sort());
  });

  it('shows the guard down over the chuck when closed, and up when open', () => {
    const closed = html({ guard: 'closed' });
    expect(closed).not.toBe(html({ guard: 'open' }));
    expect(closed.lastIndexOf('data-part="guard"')).toBeGreaterThan(
      closed.indexOf('data-part="chuck"'),
    );
  });

  it('writes name and way beside a lit part, so that colour alone tells nothing', () => {
    const lit = html({ lit: 'cross-dial', direction: 'in' });
    expect(lit).toContain('>Cross slide dial<');
    expect(lit).toContain('>in, away from you<');
    expect(lit).toContain('data-direction="in"');
    expect(lit).toMatch(/class="part part-lit" data-part="cross-dial"/);
    expect(lit).toContain('stroke-width="5"');
  });

  it('shows no arrow and no name when nothing is lit', () => {
    const plain = html({ direction: 'in' });
    expect(plain).not.toContain('data-direction');
    expect(plain).not.toContain('part-label');
  });

  it('names each touch area, and is one stop for the tab key', () => {
    const touchable = html({ onPart: () => {}, lit: 'quill' });
    for (const part of LATHE_PARTS) {
      const [name] = machineTexts.texts[`lathe.${part}`];
      expect(touchable).toContain(`aria-label="${name}"`);
    }
    expect(touchable.match(/tabindex="0"/g)).toHaveLength(1);
    expect(touchable.match(/role="button"/g)).toHaveLength(23);
  });

  it('offers no buttons when nobody listens', () => {
    expect(html()).not.toContain('role="button"');
  });
});
