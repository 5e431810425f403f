/** Looks at the colours of a page in both themes: what is too pale, what a theme moves, and what axe says. */

import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

declare global {
  interface Window {
    readonly axe: { run(options: RunOptions): Promise<AxeResults> };
  }
}

/**
 * Every fault a sentence, with its theme. Letters are looked at on a phone and on a desk, since each hides some. All rules
 * of axe are asked in the dark; in the light those that look at colours, since nothing else can differ where every box
 * of the page stands as before.
 */
export async function colourFaults(
  page: Page,
  phone: Size,
  desk: Size,
): Promise<readonly string[]> {
  const found: string[] = [];
  for (const colorScheme of ['dark', 'light'] as const) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize(desk);
    const faults = [...(await page.evaluate(paleHere))];
    await page.setViewportSize(phone);
    faults.push(...(await page.evaluate(paleHere)));
    faults.push(...(await axeFaults(page, colorScheme === 'dark' ? WHOLE : COLOURS)));
    found.push(...faults.map((one) => `${colorScheme}: ${one}`));
  }
  return (await movesWithTheme(page))
    ? [...found, 'The themes put things in different places.']
    : found;
}

/** A page moves by itself too, as from speaking to listening: only what differs at every look is the theme's. */
async function movesWithTheme(page: Page): Promise<boolean> {
  for (let looks = 0; looks < 4; looks++) {
    const boxes = new Set<string>();
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      boxes.add(await page.evaluate(boxesHere));
    }
    if (boxes.size === 1) return false;
    await page.waitForTimeout(250);
  }
  return true;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

const WHOLE: RunOptions = { resultTypes: ['violations'] };
const COLOURS: RunOptions = {
  resultTypes: ['violations'],
  runOnly: ['color-contrast', 'link-in-text-block'],
};

/** What breaks WCAG 2.2 at A or AA, and what axe calls serious beside it. */
async function axeFaults(page: Page, options: RunOptions): Promise<readonly string[]> {
  // What lies behind the foot of the Bench is small to axe, though one scrolls; there sizes are measured by `faultsOf`.
  const { violations } = await page.evaluate((asked) => {
    const enabled = document.querySelector('.bench') === null;
    return window.axe.run(
      asked.runOnly ? asked : { ...asked, rules: { 'target-size': { enabled } } },
    );
  }, options);
  return violations
    .filter(
      ({ tags, impact }) =>
        tags.some((tag) => /^wcag2\d?aa?$/.test(tag)) ||
        impact === 'serious' ||
        impact === 'critical',
    )
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

/** Runs in the page: where everything stands. */
function boxesHere(): string {
  const places = [...document.querySelectorAll('body, body *')].map((one) => {
    const { x, y, width, height } = one.getBoundingClientRect();
    return `${x} ${y} ${width} ${height}`;
  });
  return places.join();
}

/** Runs in the page: it may use nothing from outside itself. */
function paleHere(): readonly string[] {
  const LEAST_CONTRAST = 7;
  const faults: string[] = [];

  function rgb(colour: string): readonly [number, number, number, number] {
    const [r = 0, g = 0, b = 0, a = 1] = (colour.match(/[\d.]+/g) ?? []).map(Number);
    return [r, g, b, a];
  }

  /** WCAG 2.2, relative luminance. */
  function luminance(colour: string): number {
    const [r, g, b] = rgb(colour)
      .slice(0, 3)
      .map((part) => part / 255)
      .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
    return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
  }

  function groundOf(element: Element): string {
    for (let one: Element | null = element; one; one = one.parentElement) {
      const { backgroundColor } = getComputedStyle(one);
      if (rgb(backgroundColor)[3] === 1) return backgroundColor;
    }
    return 'rgb(255, 255, 255)';
  }

  function tooPale(text: string, element: Element): void {
    const { color, fill } = getComputedStyle(element);
    const ink = element instanceof SVGElement ? fill : color;
    const pair = [luminance(ink), luminance(groundOf(element))];
    const ratio = (Math.max(...pair) + 0.05) / (Math.min(...pair) + 0.05);
    if (ratio >= LEAST_CONTRAST) return;
    faults.push(`"${text}" has a contrast of ${ratio.toFixed(1)} to 1 only`);
  }

  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    const text = node.textContent?.trim() ?? '';
    if (!element || text === '' || !element.checkVisibility()) continue;
    if (element.closest('.unseen, .skip, option, title, desc, script, style') === null) {
      tooPale(text, element);
    }
  }
  return faults;
}
