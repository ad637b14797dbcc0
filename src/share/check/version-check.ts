import { EARLIER_VERSIONS } from "../../workbook/earlier/earlier-sheets";
import { PLAN_VERSION, WORKBOOK_VERSION } from "../../workbook/version";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import type { Evidence } from "../copy/evidence";
import { namedValue } from "../copy/evidence-rows";
import { type Finding, saying } from "../finding";

const otherPlan = (version: string) =>
  saying(
    "changed",
    "the file",
    `The file is of version ${version} of the nursery plan, and this check knows version ${PLAN_VERSION}: that is the likely cause where formulas, texts or figures differ.`,
    PLAN_VERSION,
    version,
  );

/** Why a file may differ though nobody changed it: it was made by another version of the audit workbook. */
export function versionFindings(book: FileBook, evidence: Evidence | null): Finding[] {
  const version = String(namedValue(book, "Workbook_Version") ?? evidence?.version ?? "").slice(0, 20);
  const plan = String(namedValue(book, "Plan_Version") ?? "").slice(0, 20);
  const known = version === "" || version === WORKBOOK_VERSION || EARLIER_VERSIONS.includes(version);
  if (known && plan !== "" && plan !== PLAN_VERSION) return [otherPlan(plan)];
  if (known) return [];
  return [
    saying(
      "changed",
      "the file",
      `The file is of version ${version} of the audit workbook, and this check knows version ${WORKBOOK_VERSION}: that is the likely cause where formulas, texts or figures differ. Check it with Canfall of its own version to be sure.`,
      WORKBOOK_VERSION,
      version,
    ),
  ];
}
