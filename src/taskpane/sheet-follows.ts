import { type RefObject, useEffect, useRef } from "react";
import type { Host } from "../hosts/host";
import { STEPS, stepOfSheet } from "./steps";
import { refreshOf } from "./workbook/refresh";

const isTyping = (place: HTMLElement | null) => {
  const active = document.activeElement;
  return active !== null && place?.contains(active) === true && active.matches("input, textarea, select");
};

/** Sheets from which a workbook is an audit or a nursery plan, and no other that has a sheet of the same name. */
const FEWEST_SHEETS = 3;
const isOurs = (sheets: readonly string[]) => sheets.filter(stepOfSheet).length >= FEWEST_SHEETS;

/**
 * The pane follows the sheet that is selected, unless a field of the pane is being typed in or the pane itself went
 * there; the answer takes the sheet to a step that was chosen. `moved`: the sheet that the pane went to last.
 */
export function useSheetFollows(
  host: Host,
  { place, moved }: { place: RefObject<HTMLElement | null>; moved: RefObject<string> },
  current: string | null,
  go: (id: string) => void,
): (id: string) => void {
  const seen = useRef<{ book: string; sheet: string; sheets: readonly string[] }>({ book: "", sheet: "", sheets: [] });
  const step = useRef(current);
  step.current = current;
  useEffect(
    () =>
      refreshOf(host).follow({
        wants: () => ({}),
        show: ({ seen: { book, sheets, selection } }) => {
          const before = seen.current;
          const sheet = selection?.area.sheet ?? before.sheet;
          seen.current = { book, sheet, sheets };
          if (before.book !== book || before.sheet === sheet) return;
          const byPane = moved.current === sheet;
          moved.current = "";
          if (byPane || isTyping(place.current)) return;
          const at = STEPS.find(({ id }) => id === step.current);
          const own = isOurs(sheets) ? stepOfSheet(sheet) : undefined;
          if (own && at && !at.sheets.includes(sheet)) go(own.id);
        },
        fail: () => {},
      }),
    [host, place, moved, go],
  );
  return (id) => {
    const { sheet, sheets } = seen.current;
    const own = STEPS.find((one) => one.id === id)!.sheets.filter((name) => sheets.includes(name));
    if (own.length === 0 || own.includes(sheet) || !isOurs(sheets)) return;
    seen.current = { ...seen.current, sheet: own[0]! };
    void host.select({ sheet: own[0]!, address: "A1" }).catch(() => {});
  };
}
