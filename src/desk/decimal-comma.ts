import { keepChoice, keptChoice } from "./kept-choice";

const KEPT_AS = "canfall-decimal-comma";
const WITH_COMMA = /^[+-]?\d*,\d+$/;

let on = false;

/** What was chosen in this browser, else what its language writes. */
function chosen(): boolean {
  const kept = keptChoice(KEPT_AS);
  return kept === null ? new Intl.NumberFormat(navigator.language).format(0.5).includes(",") : kept === "yes";
}

/** Lets a person say whether 2,5 typed into the grid is two and a half. */
export function decimalComma(box: HTMLInputElement): void {
  on = chosen();
  box.checked = on;
  box.addEventListener("change", () => {
    on = box.checked;
    keepChoice(KEPT_AS, on ? "yes" : "no");
  });
}

/** The number that was typed with a decimal comma; null where it is none, or a comma is no decimal sign here. */
export const commaNumber = (typed: string): number | null =>
  on && WITH_COMMA.test(typed) ? Number(typed.replace(",", ".")) : null;
