import { type RefObject, useEffect, useRef } from "react";
import type { Host } from "../hosts/host";
import { FIRST_STEP } from "./first-step";
import { STEPS, stepOfSheet } from "./steps";
import type { OwnMoves } from "./workbook/own-moves";
import { refreshOf } from "./workbook/refresh";

const isTyping = (place: HTMLElement | null) => {
  const active = document.activeElement;
  return active !== null && place?.contains(active) === true && active.matches("input, textarea, select");
};

/** Sheets from which a workbook is an audit or a nursery plan, and no other that has a sheet of the same name. */
const FEWEST_SHEETS = 3;
const isOurs = (sheets: readonly string[]) => sheets.filter(stepOfSheet).length >= FEWEST_SHEETS;

const isPart = (some: readonly string[], all: readonly string[]) => some.every((sheet) => all.includes(sheet));

/**
 * The pane follows the sheet that is selected, unless a field of the pane is being typed in or the pane itself went
 * there, and opens another workbook, not one with sheets added or taken away, as it does the first one; the answer takes the sheet to a step that was chosen.
 */
export function useSheetFollows(
  host: Host,
  { place, moves }: { place: RefObject<HTMLElement | null>; moves: RefObject<OwnMoves> },
  current: string | null,
  go: (id: string) => void,
): (id: string) => void {
  const seen = useRef<{ book: string; sheet: string; sheets: readonly string[] }>({ book: "", sheet: "", sheets: [] });
  const step = useRef(current);
  step.current = current;
  useEffect(
    () =>
      refreshOf(host).follow({
        wants: () => FIRST_STEP.wants,
        show: (snapshot) => {
          const { book, sheets, selection } = snapshot.seen;
          const before = seen.current;
          const sheet = selection?.area.sheet ?? before.sheet;
          seen.current = { book, sheet, sheets };
          if (before.book !== book) {
            const another = before.book !== "" && !isPart(before.sheets, sheets) && !isPart(sheets, before.sheets);
            if (another && !moves.current.opened) go(FIRST_STEP.read(snapshot));
            moves.current.opened = false;
            return;
          }
          if (before.sheet === sheet) return;
          const byPane = moves.current.sheet === sheet;
          moves.current.sheet = "";
          if (byPane || isTyping(place.current)) return;
          const at = STEPS.find(({ id }) => id === step.current);
          const own = isOurs(sheets) ? stepOfSheet(sheet) : undefined;
          if (own && at && !at.sheets.includes(sheet)) go(own.id);
        },
        fail: () => {},
      }),
    [host, place, moves, go],
  );
  return (id) => {
    const { sheet, sheets } = seen.current;
    const own = STEPS.find((one) => one.id === id)!.sheets.filter((name) => sheets.includes(name));
    if (own.length === 0 || own.includes(sheet) || !isOurs(sheets)) return;
    seen.current = { ...seen.current, sheet: own[0]! };
    void host.select({ sheet: own[0]!, address: "A1" }).catch(() => {});
  };
}
