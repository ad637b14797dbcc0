import type { Fix } from "../fix";

const OPENER = '[data-u-comp="defined-name"] a[aria-expanded="true"]';

const opener = (): HTMLElement | null => document.querySelector<HTMLElement>(OPENER);

/** The list of names goes with the next click or Escape, and once a name is chosen. */
export const namesList: Fix = {
  name: "names-list",
  wrong: "The list of names beside the formula stays open over the cells, whatever is clicked or chosen.",
  seen: "0.25.1",
  members: () => [],
  mend() {
    const close = () => opener()?.click();
    const inside = (target: EventTarget | null, place: Element | null | undefined) =>
      target instanceof Node && place?.contains(target) === true;
    const listed = () => document.getElementById(opener()?.getAttribute("aria-controls") ?? "");
    addEventListener(
      "pointerdown",
      ({ target }) => {
        if (!inside(target, listed()) && !inside(target, opener())) close();
      },
      { capture: true },
    );
    addEventListener("click", ({ target }) => {
      if (inside(target, listed())) setTimeout(close);
    });
    addEventListener("keydown", ({ key }) => key === "Escape" && close(), { capture: true });
  },
};
