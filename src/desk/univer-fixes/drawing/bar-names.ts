import { LocaleService } from "@univerjs/core";
import { IMenuManagerService, MenuManagerPosition } from "@univerjs/preset-sheets-core";
import type { Grid } from "../../../hosts/desk/grid";
import type { Fix } from "../fix";

/** Parts of the grid that no menu names in time, with what they are for. */
const OTHERS: [selector: string, names: string[]][] = [
  ['[data-u-comp="defined-name"] input', ["Name or address of the selected cells"]],
  ['[data-u-comp="formula-bar"] button', ["Show more of the formula"]],
  ['[data-u-comp="sheet-bar-append-button"]', ["Add a sheet", "All sheets"]],
  ['button[role="handle"]', ["Zoom"]],
  ['a[role="button"]', ["100 %"]],
  ['button[data-u-comp="button"]', ["Zoom out", "Zoom in"]],
  ['[data-u-command="sheet.command.toggle-gridlines"]', ["Grid lines"]],
  ['button[data-u-command="sheet.command.numfmt.set.percent"]', ["Percent"]],
  ['button[data-u-command="sheet.command.numfmt.set.currency"]', ["Currency"]],
  ['button[data-u-command="sheet.command.numfmt.add.decimal.command"]', ["One decimal more"]],
  ['button[data-u-command="sheet.command.numfmt.subtract.decimal.command"]', ["One decimal fewer"]],
];

/** What the grid's menus say of each command when the pointer is over it. */
export function saidOf({ injector }: Grid): Map<string, string> {
  const words = injector.get(LocaleService);
  const said = new Map<string, string>();
  const all = injector.get(IMenuManagerService).getFlatMenuByPositionKey(MenuManagerPosition.RIBBON);
  const take = (items: typeof all): void => {
    for (const { item, children } of items) {
      const key = item?.tooltip ?? item?.title;
      if (item && key) said.set(item.id, words.t(key));
      if (children) take(children);
    }
  };
  take(all);
  return said;
}

const isNameless = (element: Element): boolean =>
  !element.hasAttribute("aria-label") && (element.tagName === "INPUT" || element.textContent?.trim() === "");

function name(place: Element, said: Map<string, string>): void {
  for (const element of place.querySelectorAll("button, input")) {
    const command = element.closest("[data-u-command]")?.getAttribute("data-u-command");
    const words = command && said.get(command);
    if (words && isNameless(element)) element.setAttribute("aria-label", words);
  }
  for (const [selector, names] of OTHERS) {
    const found = [...place.querySelectorAll(selector)];
    found.forEach((element, i) => {
      if (isNameless(element)) element.setAttribute("aria-label", names[i % names.length]!);
    });
  }
}

/** Buttons and fields have as their name what the grid says of them under the pointer. */
export const barNames: Fix = {
  name: "bar-names",
  wrong: "The buttons and fields around the grid have no names for those who do not see their pictures.",
  seen: "0.25.1",
  members: ({ injector }) => [["IMenuManagerService", injector.get(IMenuManagerService), "getFlatMenuByPositionKey"]],
  mend(grid) {
    const place = document.getElementById("grid")!;
    let said: Map<string, string> | undefined;
    let waiting = false;
    const look = () => {
      waiting = false;
      if (!said || said.size === 0) said = saidOf(grid);
      name(place, said);
    };
    new MutationObserver(() => {
      if (waiting) return;
      waiting = true;
      requestAnimationFrame(look);
    }).observe(place, { childList: true, subtree: true });
  },
};
