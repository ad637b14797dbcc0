import type { Page } from "playwright-core";

/**
 * What is cut, covered or wrapped in the visible step of the pane, a line each, by measured boxes:
 *
 * - nothing is wider than the pane, and no text wider than its box, but in a box that has a bar of its own style, which is always seen;
 * - every control, brought into sight, is what a click at its middle meets;
 * - groups and steps are in one line each;
 * - no words of a picture lie beyond its edge.
 */
export async function boxFindings(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const pane = document.getElementById("pane")!;
    const found: string[] = [];
    const seen = (element: Element) => element.checkVisibility({ visibilityProperty: true });
    const said = (element: Element) => `${element.tagName} ${(element.textContent || element.id).trim().slice(0, 50)}`;
    const all = [...pane.querySelectorAll<HTMLElement>("*")].filter(seen);
    const across = pane.getBoundingClientRect();
    const whole = document.documentElement;
    if (whole.scrollWidth > whole.clientWidth || whole.scrollHeight > whole.clientHeight)
      found.push(`the page needs ${whole.scrollWidth} by ${whole.scrollHeight} px`);
    const pen = document.createElement("canvas").getContext("2d")!;
    for (const one of all) {
      if (!(one instanceof HTMLSelectElement)) continue;
      const { font, paddingLeft, paddingRight } = getComputedStyle(one);
      pen.font = font;
      const words = one.selectedOptions[0]?.text ?? "";
      const room = one.clientWidth - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight);
      if (pen.measureText(words).width > room + 1) found.push(`cut: ${words}`);
    }
    if (pane.scrollWidth > pane.clientWidth) found.push(`the pane needs ${pane.scrollWidth} of ${pane.clientWidth} px`);
    for (const one of all) {
      const { overflowX, textOverflow } = getComputedStyle(one);
      if (!(one instanceof HTMLElement) || one.matches(".unseen, .unseen *, input, select, [data-tabster-dummy]"))
        continue;
      if (one.scrollWidth <= one.clientWidth + 1 || one.clientWidth === 0) continue;
      if (overflowX === "auto" || overflowX === "scroll") {
        if (!one.matches(".wide")) found.push(`no bar is seen: ${said(one)}`);
      } else if (overflowX !== "visible" && textOverflow !== "ellipsis") found.push(`cut: ${said(one)}`);
    }
    for (const one of all) {
      const box = one.getBoundingClientRect();
      const scrolls = one.closest(".wide, .unseen, [data-tabster-dummy]") !== null || one.textContent === "";
      if (one instanceof HTMLElement && box.width > 0 && !scrolls && box.right > across.right + 1)
        found.push(`beyond the pane: ${said(one)}`);
    }
    for (const line of [".groups button", ".steps [role=tab]"]) {
      const tops = new Set([...pane.querySelectorAll(line)].map((one) => Math.round(one.getBoundingClientRect().top)));
      if (tops.size > 1) found.push(`wrapped: ${line}`);
      for (const one of pane.querySelectorAll(line)) {
        if (one.getBoundingClientRect().height > 36) found.push(`wrapped: ${said(one)}`);
      }
    }
    for (const one of all) {
      if (!one.matches("button:not([disabled]), input, select, textarea, summary, a[href]")) continue;
      one.scrollIntoView({ block: "nearest", inline: "nearest" });
      const box = one.getBoundingClientRect();
      if (box.width < 2 || box.height < 2 || one.closest(".unseen")) continue;
      const met = document.elementFromPoint(box.left + box.width / 2, box.top + Math.min(box.height / 2, 12));
      if (!met || !(one.contains(met) || met.contains(one) || met.closest("label")?.htmlFor === one.id))
        found.push(`covered: ${said(one)} by ${met ? said(met) : "nothing"}`);
    }
    for (const picture of pane.querySelectorAll<SVGSVGElement>("svg[role=img]")) {
      if (!seen(picture)) continue;
      const edge = picture.getBoundingClientRect();
      for (const words of picture.querySelectorAll("text")) {
        const box = words.getBoundingClientRect();
        if (box.left < edge.left - 1 || box.right > edge.right + 1 || box.bottom > edge.bottom + 1)
          found.push(`beyond its picture: ${words.textContent}`);
      }
    }
    pane.querySelector(".content")?.scrollTo({ top: 0 });
    return found;
  });
}
