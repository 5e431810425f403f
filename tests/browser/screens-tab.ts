/** Goes through a screen with the Tab key alone, and says what is not reached, not seen, or out of order. */

import type { Page } from 'playwright-core';

interface Stop {
  readonly element: Element;
  readonly box: DOMRect;
  readonly fault: string | null;
}

declare global {
  interface Window {
    tabStops: Stop[];
    /** All that is to be reached; of radio buttons the chosen one, of the parts of a picture the lit one. */
    tabTargets: readonly Element[];
    tabListener?: AbortController;
  }
}

/** Every fault a sentence; none on a good screen. */
export async function tabFaults(page: Page): Promise<readonly string[]> {
  const tabs = await page.evaluate(listen);
  for (let tab = 0; tab < tabs; tab++) await page.keyboard.press('Tab');
  return page.evaluate(judge);
}

/** With the Tab key to what is called so; gives back the names that were passed. */
export async function tabTo(page: Page, wanted: string | RegExp): Promise<void> {
  const passed: string[] = [];
  for (let tab = 0; tab < 150; tab++) {
    await page.keyboard.press('Tab');
    const name = await page.evaluate(nameOfFocus);
    if (typeof wanted === 'string' ? name === wanted : wanted.test(name)) return;
    passed.push(name);
  }
  throw new Error(`"${wanted}" is not reached by: ${passed.join(' | ')}`);
}

/** Runs in the page. */
function nameOfFocus(): string {
  const one = document.activeElement;
  const fields = 'input, select, textarea';
  const label = one?.matches(fields) ? (one as HTMLInputElement).labels?.[0] : undefined;
  const name = one?.getAttribute('aria-label') ?? (label ?? one)?.textContent ?? '';
  return name.replace(/\s+/g, ' ').trim();
}

/** Runs in the page: looks at each thing as the focus comes to it. */
function listen(): number {
  const LEAST_OUTLINE = 2;
  /** What shows that it has the focus, and is seen: a hidden radio button is its label. */
  const shownBy = (one: Element) => (one.matches('input') ? (one.closest('label') ?? one) : one);

  function fault(one: Element): string | null {
    const shown = shownBy(one);
    const outlined = [one, shown].some((each) => {
      const { outlineStyle, outlineWidth } = getComputedStyle(each);
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= LEAST_OUTLINE;
    });
    if (!outlined) return 'does not show that it has the focus';
    const { left, right, top, bottom } = shown.getBoundingClientRect();
    if (bottom <= 0 || top >= innerHeight || right <= 0 || left >= innerWidth) {
      return 'has the focus out of sight';
    }
    const [x, y] = [(left + right) / 2, (Math.max(0, top) + Math.min(innerHeight, bottom)) / 2];
    const above = document.elementsFromPoint(x, y).find((each) => each !== one);
    const foot = above?.closest('.bench-head, .bench-foot');
    return foot && !foot.contains(one) && !shown.contains(above ?? null)
      ? 'has the focus behind the head or the foot'
      : null;
  }

  /** The chosen one of a group is reached, or the first where none is chosen. */
  function isReached(one: Element): boolean {
    if (!(one instanceof HTMLInputElement) || one.type !== 'radio') return true;
    const group = [...document.querySelectorAll<HTMLInputElement>(`input[name="${one.name}"]`)];
    return one === (group.find(({ checked }) => checked) ?? group[0]);
  }

  const targets = [
    ...document.querySelectorAll(
      'a[href], button:not([disabled]), input, select, textarea, summary, [role="button"], [tabindex="0"]',
    ),
  ].filter(
    (one) => one.checkVisibility() && isReached(one) && one.getAttribute('tabindex') !== '-1',
  );
  window.tabTargets = targets;
  window.tabStops = [];
  // From the top, wherever the focus was.
  const start = document.createElement('span');
  start.tabIndex = -1;
  document.body.prepend(start);
  start.focus();
  start.remove();
  window.scrollTo(0, 0);
  window.tabListener?.abort();
  window.tabListener = new AbortController();
  const { signal } = window.tabListener;
  const note = ({ target }: FocusEvent) => {
    if (!(target instanceof Element)) return;
    const box = shownBy(target).getBoundingClientRect();
    const there = new DOMRect(box.x + scrollX, box.y + scrollY, box.width, box.height);
    window.tabStops.push({ element: target, box: there, fault: fault(target) });
  };
  document.body.addEventListener('focusin', note, { signal });
  // One more for a place that is scrolled, and one for coming in. A day is three numbers and a calendar.
  const days = targets.filter((one) => one.matches('[type="date"]')).length;
  return targets.length + 2 + 3 * days;
}

/** Runs in the page. */
function judge(): readonly string[] {
  const nameOf = (one: Element) =>
    `${one.tagName.toLowerCase()} "${(one.getAttribute('aria-label') ?? one.textContent ?? '').trim() || one.id}"`;
  const stops = window.tabStops;
  window.tabListener?.abort();
  const reached = new Set(stops.map(({ element }) => element));
  const missed = window.tabTargets.filter((one) => !reached.has(one));
  const faults = missed.map((one) => `${nameOf(one)} is not reached with the Tab key`);
  for (const { element, fault } of stops) if (fault) faults.push(`${nameOf(element)} ${fault}`);
  const first = stops[0]?.element;
  const round = stops.findIndex(({ element }, place) => place > 0 && element === first);
  const once = round < 0 ? stops : stops.slice(0, round);
  once.forEach(({ element, box }, place) => {
    const before = once[place - 1];
    if (!before) return;
    // As one reads: down, or to the next column; in what stays at its place nothing is scrolled.
    const fixed = [element, before.element].some((one) =>
      one.closest('.bench-head, .bench-foot, svg, .skip'),
    );
    const isUp = box.bottom <= before.box.top + 1;
    const isNextColumn = box.left >= before.box.right - 1;
    if (!fixed && isUp && !isNextColumn) {
      faults.push(
        `${nameOf(element)} comes after ${nameOf(before.element)}, which stands below it`,
      );
    }
  });
  return faults;
}
