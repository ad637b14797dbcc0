import { basis, SAME_BASIS } from "./basis";
import type { RegisteredAudit } from "./registered-audit";

/** What changed from one audit of a block to the next; null where a figure is not known. */
export interface Change {
  /** SAME_BASIS, or why nothing may be compared. */
  basis: string;
  /** [mm/h] */
  mar: number | null;
  /** [points of %] */
  cu: number | null;
  /** [points of %] */
  du: number | null;
  /** Of the kind that sets the run time. */
  sc: number | null;
  /** [kL a year]; OTHER_AREA where the two are of different areas */
  water: number | null | typeof OTHER_AREA;
}

export const OTHER_AREA = "other area";

const difference = (before: number | null, after: number | null) =>
  before === null || after === null ? null : after - before;

/** The SC that sets the run time, of the kinds that can be compared. */
const scOf = ({ kind, scCan, scQuarter }: RegisteredAudit) => (kind === "low quarter" ? scQuarter : scCan);

/**
 * What changed from an earlier audit of a block to a later one, each figure as later less earlier.
 *
 * @param earlier The one before
 * @param later The one after
 * @returns The changes; all null unless both are on the same basis
 * @source arithmetic: the later value less the earlier
 */
export function change(earlier: RegisteredAudit, later: RegisteredAudit): Change {
  const words = basis(earlier, later);
  if (words !== SAME_BASIS) return { basis: words, mar: null, cu: null, du: null, sc: null, water: null };
  return {
    basis: words,
    mar: difference(earlier.mar, later.mar),
    cu: difference(earlier.cu, later.cu),
    du: difference(earlier.du, later.du),
    sc: difference(scOf(earlier), scOf(later)),
    water: earlier.area === later.area ? difference(earlier.water, later.water) : OTHER_AREA,
  };
}
