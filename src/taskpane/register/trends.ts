import { MEASURES } from "../../core/figures/measures";
import { basis, SAME_BASIS } from "../../core/register/basis";
import { type RegisteredAudit, sameBlock } from "../../core/register/registered-audit";

/** A figure of one audit. */
export interface TrendPoint {
  day: number;
  value: number;
  /** Whether it is on the basis of the block's last audit. */
  joined: boolean;
}

/** One measure of a block over time. */
export interface Trend {
  id: string;
  title: string;
  unit: string;
  points: TrendPoint[];
}

/** MAR, CU and the SC that sets the run time of one block, in the order of its audits. */
export function trendsOf(audits: readonly RegisteredAudit[], block: RegisteredAudit): Trend[] {
  const own = audits.filter((audit) => sameBlock(audit, block)).sort((one, other) => one.day - other.day);
  const latest = own.at(-1)!;
  const points = (value: (audit: RegisteredAudit) => number | null) =>
    own.flatMap((audit): TrendPoint[] => {
      const found = value(audit);
      if (found === null) return [];
      return [{ day: audit.day, value: found, joined: audit === latest || basis(audit, latest) === SAME_BASIS }];
    });
  const quarter = latest.kind === "low quarter";
  return [
    { id: "mar", title: MEASURES.MAR.short, unit: MEASURES.MAR.unit, points: points(({ mar }) => mar) },
    { id: "cu", title: MEASURES.CU.short, unit: MEASURES.CU.unit, points: points(({ cu }) => cu) },
    {
      id: "sc",
      title: (quarter ? MEASURES.SC_QUARTER : MEASURES.SC_CAN).name,
      unit: "",
      points: points(({ scCan, scQuarter }) => (quarter ? scQuarter : scCan)),
    },
  ];
}
