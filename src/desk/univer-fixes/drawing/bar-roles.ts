import { IMenuManagerService } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";
import { saidOf } from "./bar-names";

const OPENERS = "div[aria-expanded]:not([role]), a[aria-expanded]:not([role])";
const INSIDE = "button, input, [tabindex]";
/** Roles that there are none of, on parts whose tag says what they are. */
const UNKNOWN = '[role="track"], [role="handle"]';

type Said = Map<string, string>;

function wordsFor(element: Element, said: Said): string {
  const holder = element.closest("[data-u-command]") ?? element.querySelector("[data-u-command]");
  const words = said.get(holder?.getAttribute("data-u-command") ?? "");
  return words ?? (element.closest('[data-u-comp="defined-name"]') ? "Defined names" : "More");
}

/** Makes what opens a list a button for keys and readers, where no field or button is in it that is one already. */
function opener(element: Element, said: Said): void {
  if (element.querySelector(INSIDE)) {
    element.removeAttribute("aria-expanded");
    element.removeAttribute("aria-haspopup");
    return;
  }
  element.setAttribute("role", "button");
  element.setAttribute("tabindex", "0");
  if (element.textContent?.trim() === "") element.setAttribute("aria-label", wordsFor(element, said));
  element.addEventListener("keydown", (event) => {
    const { key } = event as KeyboardEvent;
    if (element.getAttribute("data-slot") !== "popover-trigger" || (key !== "Enter" && key !== " ")) return;
    event.preventDefault();
    (element as HTMLElement).click();
  });
}

function mendRoles(place: Element, said: Said): void {
  for (const element of place.querySelectorAll(OPENERS)) opener(element, said);
  for (const element of place.querySelectorAll(UNKNOWN)) {
    if (element.hasAttribute("aria-label") || element.tagName !== "BUTTON") element.removeAttribute("role");
  }
  const spoken = new Map<string, number>();
  for (const element of document.querySelectorAll("section[aria-live][aria-label]")) {
    const label = element.getAttribute("aria-label")!;
    const count = (spoken.get(label) ?? 0) + 1;
    spoken.set(label, count);
    if (count > 1) element.setAttribute("aria-label", `${label}, ${count}`);
  }
  for (const canvas of place.querySelectorAll<HTMLElement>("canvas")) {
    if (canvas.tabIndex > 0) canvas.tabIndex = canvas.id.startsWith("univer-sheet-main") ? 0 : -1;
  }
}

/** Parts of the bar have the roles that they act in, and are reached by Tab in the order of the page. */
export const barRoles: Fix = {
  name: "bar-roles",
  wrong:
    "Parts of the grid's bar that open lists are no buttons for keys and readers, some have roles that there are none of.",
  seen: "0.25.1",
  members: ({ injector }) => [["IMenuManagerService", injector.get(IMenuManagerService), "getFlatMenuByPositionKey"]],
  mend(grid) {
    const place = document.getElementById("grid")!;
    let said: Said = new Map();
    let waiting = false;
    const look = () => {
      waiting = false;
      if (said.size === 0) said = saidOf(grid);
      mendRoles(place, said);
    };
    new MutationObserver(() => {
      if (waiting) return;
      waiting = true;
      requestAnimationFrame(look);
    }).observe(place, { childList: true, subtree: true, attributeFilter: ["aria-expanded", "tabindex"] });
  },
};
