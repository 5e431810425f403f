/** Measures what is on the page: what sticks out, what is cut, what lies on what, what is too small. */

import type { Page } from 'playwright-core';

/** Every fault a sentence with the text it is about; none on a good page. */
export function faultsOf(page: Page): Promise<readonly string[]> {
  return page.evaluate(measureHere);
}

/** Runs in the page: it may use nothing from outside itself. */
function measureHere(): readonly string[] {
  const LEAST_TARGET = 64;
  const faults: string[] = [];
  const bench = document.querySelector('.bench');

  interface Shown {
    readonly text: string;
    readonly element: Element;
    readonly boxes: readonly DOMRect[];
    readonly layer: string;
  }

  const isUnseen = (element: Element) => element.closest('.unseen, .skip, svg, option') !== null;
  const layerOf = (element: Element) =>
    ['.bench-head', '.bench-foot'].find((layer) => element.closest(layer)) ?? 'main';

  function shownTexts(): readonly Shown[] {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const shown: Shown[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      const text = node.textContent?.trim() ?? '';
      if (!element || text === '' || isUnseen(element) || !element.checkVisibility()) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const boxes = [...range.getClientRects()].filter(({ width, height }) => width * height > 0);
      if (boxes.length > 0) shown.push({ text, element, boxes, layer: layerOf(element) });
    }
    return shown;
  }

  /** The nearest thing round a text that has an edge one can see, or that cuts. */
  function holderOf(element: Element): Element | null {
    for (let one: Element | null = element; one; one = one.parentElement) {
      const { borderTopWidth, overflowX, backgroundColor } = getComputedStyle(one);
      const edged = Number.parseFloat(borderTopWidth) > 0 || overflowX !== 'visible';
      if (edged || (one.matches('button, a') && backgroundColor !== 'rgba(0, 0, 0, 0)')) return one;
    }
    return null;
  }

  function sticksOut({ text, element, boxes }: Shown): void {
    const page = document.documentElement.clientWidth;
    if (boxes.some(({ left, right }) => left < -1 || right > page + 1)) {
      faults.push(`"${text}" sticks out of the page`);
    }
    const edge = holderOf(element)?.getBoundingClientRect();
    if (!edge) return;
    // Line boxes are taller than letters: only a clear miss counts above and below.
    const out = boxes.some(
      ({ left, right, top, bottom }) =>
        left < edge.left - 1 ||
        right > edge.right + 1 ||
        top < edge.top - 4 ||
        bottom > edge.bottom + 4,
    );
    if (out) faults.push(`"${text}" is cut or sticks out of its box`);
  }

  interface Letters {
    readonly of: Shown;
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  }

  /** Letters take about the middle seven tenths of a line box. Highest first. */
  function lettersOf(texts: readonly Shown[]): readonly Letters[] {
    const all = texts.flatMap((of) =>
      of.boxes.map(({ left, right, top, bottom }) => {
        const off = (bottom - top) * 0.15;
        return { of, left: left + 1, right: right - 1, top: top + off, bottom: bottom - off };
      }),
    );
    return all.sort((one, other) => one.top - other.top);
  }

  function lieOver(texts: readonly Shown[]): void {
    const all = lettersOf(texts);
    all.forEach((a, index) => {
      for (const b of all.slice(index + 1)) {
        if (b.top >= a.bottom) break;
        if (a.of === b.of || a.of.layer !== b.of.layer) continue;
        if (a.left < b.right && b.left < a.right) {
          faults.push(`"${a.of.text}" lies over "${b.of.text}"`);
        }
      }
    });
  }

  function tooSmall(element: Element): void {
    if (!element.checkVisibility()) return;
    const { width, height } = element.getBoundingClientRect();
    if (width >= LEAST_TARGET - 0.5 && height >= LEAST_TARGET - 0.5) return;
    const size = `${Math.round(width)} × ${Math.round(height)}`;
    faults.push(`"${element.textContent?.trim()}" can be touched on ${size} px only`);
  }

  /** Things with an edge never lie on one another within their layer. */
  function crossing(): void {
    const things = [...document.querySelectorAll('button, .sound, .gate-row, .figure, .picture')]
      .filter((one) => !isUnseen(one) && one.checkVisibility())
      .map((one) => ({ one, box: one.getBoundingClientRect(), layer: layerOf(one) }));
    things.forEach((a, index) => {
      for (const b of things.slice(index + 1)) {
        if (a.layer !== b.layer || a.one.contains(b.one) || b.one.contains(a.one)) continue;
        const apart =
          a.box.right <= b.box.left + 1 ||
          b.box.right <= a.box.left + 1 ||
          a.box.bottom <= b.box.top + 1 ||
          b.box.bottom <= a.box.top + 1;
        if (!apart) faults.push(`"${a.one.textContent}" lies on "${b.one.textContent}"`);
      }
    });
  }

  /** What makes the page wider than the screen, innermost last. */
  function widest(least: number): string {
    const wide = [...document.body.querySelectorAll('*')].filter(
      (one) => one.getBoundingClientRect().right > least + 1 && !isUnseen(one),
    );
    return wide.map(({ tagName, id, className }) => `${tagName} ${id} ${className}`).join(' > ');
  }

  const { scrollWidth, clientWidth } = document.documentElement;
  if (scrollWidth > clientWidth) {
    faults.push(`The page is ${scrollWidth} px wide on ${clientWidth}: ${widest(clientWidth)}`);
  }
  crossing();
  const texts = shownTexts();
  lieOver(texts);
  for (const one of texts) sticksOut(one);
  for (const element of bench?.querySelectorAll('button, a, summary') ?? []) tooSmall(element);
  return faults;
}
