import type { Ends } from "../../core/summary/verdict";
import { WITH_ENDS } from "../../workbook/answer/test-summary";
import { type CellsOf, numberOf, textOf } from "../../workbook/bed/cells-of";

/** The intervals that an audit says it keeps; whether they are true is looked at by themselves. */
export interface KeptEnds {
  /** Whether readings or heads were changed since. */
  stale: boolean;
  /** By the endings of the names; none where nothing is kept, or it is out of date. */
  ends: ReadonlyMap<string, Ends>;
}

export function keptEnds(cells: CellsOf): KeptEnds {
  const stamp = textOf(cells, "Ends_Stamp");
  const stale = stamp !== "" && stamp !== textOf(cells, "Inputs_Stamp");
  if (stamp === "" || stale) return { stale, ends: new Map() };
  const ends = WITH_ENDS.flatMap(([short]) => {
    const [low, high] = [numberOf(cells, `Ends_${short}_Low`), numberOf(cells, `Ends_${short}_High`)];
    return low !== undefined && high !== undefined ? [[short, [low, high]] as const] : [];
  });
  return { stale, ends: new Map(ends) };
}
