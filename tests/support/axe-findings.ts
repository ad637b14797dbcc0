import axe from "axe-core";

/** jsdom works a style out anew each time that it is asked: while axe looks at a page, once an element is enough. */
async function withStylesKept<T>(work: () => Promise<T>): Promise<T> {
  const { getComputedStyle } = window;
  const kept = new Map<Element, CSSStyleDeclaration>();
  window.getComputedStyle = (element, pseudo) => {
    if (pseudo) return getComputedStyle.call(window, element, pseudo);
    const style = kept.get(element) ?? getComputedStyle.call(window, element);
    kept.set(element, style);
    return style;
  };
  try {
    return await work();
  } finally {
    window.getComputedStyle = getComputedStyle;
  }
}

/** What axe finds; jsdom has no layout, so colour contrast is looked at in the browser tests. */
export async function axeFindings(place: Element): Promise<string[]> {
  const { violations } = await withStylesKept(() =>
    axe.run(place, { rules: { "color-contrast": { enabled: false } }, resultTypes: ["violations"] }),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`);
}
