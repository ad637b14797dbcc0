/** One block audit in a register; what is not known is null. */
export interface RegisteredAudit {
  /** Site and block as people call them; capitals and blanks at the ends make no other block */
  site: string;
  block: string;
  /** Day of the test, counted in whole days from any one day */
  day: number;
  /** Cans read */
  cans: number | null;
  /** Columns and rows of cans, such as "5 × 5" */
  grid: string | null;
  /** One of WIND_CLASSES */
  wind: string | null;
  /** Mean pressure at the heads [kPa], more than 0 */
  pressure: number | null;
  /** Mean application rate [mm/h] */
  mar: number | null;
  /** [%] */
  cu: number | null;
  /** Of the low quarter [%] */
  du: number | null;
  scCan: number | null;
  scQuarter: number | null;
  /** What sets the run time: "driest can", "low quarter" or "share of pots" */
  kind: string | null;
  /** [kL a year] */
  water: number | null;
  /** [m²] */
  area: number | null;
}

/** A name as it is compared with others. */
export const plainName = (name: string): string => name.trim().replace(/ +/g, " ").toLowerCase();

/** Whether two audits are of one block. */
export const sameBlock = (one: RegisteredAudit, other: RegisteredAudit): boolean =>
  plainName(one.site) === plainName(other.site) && plainName(one.block) === plainName(other.block);
