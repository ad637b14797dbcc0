import { writeFileSync } from "node:fs";
import { deflateSync } from "fflate";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { WORKBOOK_VERSION } from "../../src/workbook/version";

/** Keeps what a check has to know of the audit's sheets as they are now; run it before WORKBOOK_VERSION is raised. */
const sheets = AUDIT_SHEETS.map(({ name, cells, areas }) => ({
  name,
  widths: [],
  cells: cells.map(({ at, kind, value, formula, name: named }) => ({ at, kind, value, formula, name: named })),
  areas,
}));
const deflated = deflateSync(new TextEncoder().encode(JSON.stringify(sheets)), { level: 9 });
const file = new URL(`../../src/workbook/earlier/audit-${WORKBOOK_VERSION}.json`, import.meta.url);
writeFileSync(file, `${JSON.stringify({ deflated: Buffer.from(deflated).toString("base64") })}\n`);
