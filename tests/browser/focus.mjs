// Where Tab leads, and whether it is seen there (WCAG 2.2: 2.1.1, 2.4.7, 2.4.11).

/** What has the focus: a name to tell it by, whether the focus is seen, and whether it is in sight. */
const focused = (page) => page.evaluate(() => {
  const element = document.activeElement;
  if (!element || element === document.body) return null;
  globalThis.visited ??= new Set();
  const again = globalThis.visited.has(element);
  globalThis.visited.add(element);
  // A choice's dot is hidden: the word beside it carries the outline.
  const shown = element.type === 'radio' && element.closest('.choice') ? element.nextElementSibling : element;
  const { outlineStyle, outlineWidth } = getComputedStyle(shown);
  const box = shown.getBoundingClientRect();
  const over = document.elementFromPoint(box.x + box.width / 2, Math.min(box.y + box.height / 2, innerHeight - 1));
  return {
    name: `${element.tagName.toLowerCase()} ${element.id || element.name || element.textContent.trim().slice(0, 30)}`,
    again,
    outlined: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2,
    inSight: box.width > 0 && box.height > 0 && box.bottom > 0 && box.top < innerHeight && shown.contains(over),
  };
});

/** Presses Tab round the page once, over its end, where nothing is focused; gives every stop. */
export async function tabRound(page) {
  const stops = [];
  await page.evaluate(() => { globalThis.visited = new Set(); });
  for (;;) {
    await page.keyboard.press('Tab');
    const stop = await focused(page);
    if (stop?.again) return stops;
    if (stop) stops.push(stop);
  }
}

/** What can be used, but was not visited. Of a set of radios one stop is enough. */
export const missed = (page) => page.evaluate(() => {
  const usable = [...document.querySelectorAll('button, input, select, textarea, summary, a[href], [tabindex="0"]')]
    .filter((element) => !element.disabled && element.checkVisibility({ visibilityProperty: true }) && element.tabIndex >= 0);
  const radios = new Set([...globalThis.visited].filter(({ type }) => type === 'radio').map(({ name }) => name));
  return usable
    .filter((element) => !globalThis.visited.has(element) && !(element.type === 'radio' && radios.has(element.name)))
    .map((element) => element.outerHTML.slice(0, 120));
});
