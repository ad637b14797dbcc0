import { isoDay } from "../../cells/day-number";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import type { Evidence } from "../copy/evidence";
import { namedValue } from "../copy/evidence-rows";
import type { CopyFacts } from "../copy-report";

/** What a file says of itself: an audit, a nursery plan, both or neither. */
export function factsOf(book: FileBook, evidence: Evidence | null, isAudit: boolean, isPlan: boolean): CopyFacts {
  const words = (...names: string[]) =>
    String(names.map((name) => namedValue(book, name)).find((value) => (value ?? "") !== "") ?? "");
  const day = isoDay(evidence?.day);
  const kinds = [isAudit && "audit", isPlan && "nursery plan"].filter(Boolean).join(" and ");
  const what = kinds === "" ? "workbook without the audit's sheets" : kinds;
  return {
    site: words("Site_Name", "Nursery_Name"),
    block: words("Block_Name"),
    date: isoDay(namedValue(book, "Test_Date")) || isoDay(namedValue(book, "Plan_Date")),
    kind: evidence ? `share copy of ${day || "an unknown day"}, ${what}` : what,
  };
}
