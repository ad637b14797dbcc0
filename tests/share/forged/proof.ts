import { readFileSync } from "node:fs";
import { checkCopy } from "../../../src/share/check/check-copy";
import { shareCopy } from "../../../src/share/copy/share-copy";
import { EXAMPLE_ENTRIES } from "../../../src/workbook/audit/example";
import { calculatedAudits } from "../../support/templates";
import { AUDIT_KINDS } from "./audit-kinds";
import { forgedWithOpenpyxl } from "./openpyxl";
import { found, outcomeOf } from "./outcome";
import { PLAN_KINDS } from "./plan-kinds";
import { TYPED_TEXTS } from "./seventh-kinds";

const DAY = new Date(2026, 10, 25);
const COMMENT = "but for a comment";

/** Builds forged copies of each kind and prints, kind by kind, whether the check finds them. */
async function proof(): Promise<void> {
  const copy = await shareCopy(new Uint8Array(readFileSync("templates/example-audit.xlsx")), DAY);
  let [count, missed] = [0, 0];
  const told = (good: boolean, kind: string, said: string) => {
    count += 1;
    if (!good) missed += 1;
    console.log(`${good ? "found    " : "NOT FOUND"} ${kind}: ${said.slice(0, 110)}`);
  };
  for (const forgery of AUDIT_KINDS) {
    const { found: good, said } = await found(copy, forgery);
    told(good, forgery.kind, said);
  }
  const plan = await shareCopy(new Uint8Array(readFileSync("templates/example-nursery.xlsx")), DAY);
  for (const forgery of PLAN_KINDS) {
    const { found: good, said } = await found(plan, forgery);
    told(good, forgery.kind, said);
  }
  for (const { kind, file } of await forgedWithOpenpyxl(copy)) {
    const { result, said } = await outcomeOf(file);
    told(kind.endsWith(COMMENT) ? result === "agrees" && said !== "" : result !== "agrees", kind, said);
  }
  const typed = await calculatedAudits(TYPED_TEXTS.map(([, text]) => ({ ...EXAMPLE_ENTRIES, Block_Name: text })));
  for (const [index, [kind, , named]] of TYPED_TEXTS.entries()) {
    const { result, said } = await outcomeOf(await shareCopy(typed[index]!, DAY));
    told(said !== "" && (result === "agrees") === (named === true), `typed before the copy was made: ${kind}`, said);
  }
  console.log(`${count} forged copies: ${missed} not found`);
  const readings = EXAMPLE_ENTRIES.Cans_Readings as readonly (readonly (string | number)[])[];
  const other = readings.map((row) => row.map((value) => (typeof value === "number" ? value + 1 : value)));
  const [file] = await calculatedAudits([{ ...EXAMPLE_ENTRIES, Cans_Readings: other }]);
  const whole = await checkCopy(await shareCopy(file!, DAY));
  const code = (await checkCopy(copy)).code;
  console.log(
    `A copy forged whole, its readings, list and code: ${whole.agrees ? "agrees" : "found"}, code ${whole.code}, that of the copy sent first ${code}`,
  );
}

proof();
