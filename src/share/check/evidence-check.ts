import { cellAt } from "../../cells/places";
import { areaOf, placeName } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { COVERAGE } from "../../workbook/audit/coverage/coverage";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { inputDigest } from "../copy/digest";
import type { Evidence } from "../copy/evidence";
import { areaOfInput, inputNames, typedInputs } from "../copy/input-list";
import { PAINTED, paintedInputs, samePaint } from "../copy/painted-coverage";
import { sameValue } from "./agreement";

type Placed = { name: string; row: number; column: number; value: Stated };

const keyOf = ({ name, row, column }: Placed) => `${name}\n${row}\n${column}`;
const statedWords = (value: Stated) => (value === null || value === "" ? "nothing" : `"${String(value).slice(0, 60)}"`);
const differs = (one: Stated, other: Stated) => typeof one !== typeof other || !sameValue(one, other);

/** A value by its cell, and by what it is: `The reading in Cans!G10 (row 5, column 1 of the cans)`. */
function whatOf(book: FileBook, { name, row, column }: Placed): string {
  if (name === PAINTED) return `What ${COVERAGE.name}!${cellAt(row, column)} draws on`;
  const area = areaOfInput(book, name);
  const place = area ? placeName(area.sheet, cellAt(area.top + row - 1, area.left + column - 1)) : name;
  if (name === "Cans_Readings") return `The reading in ${place} (row ${row}, column ${column} of the cans)`;
  const what = name.startsWith("Limit") ? "The limit" : "What was typed";
  return `${what} in ${place}${area && book.names.has(name) ? ` (${name})` : ""}`;
}

/** What was typed, as the Evidence sheet lists it, against its own hash and against the sheets. */
export async function inputFindings(
  book: FileBook,
  evidence: Evidence,
  specs: readonly SheetSpec[],
): Promise<string[]> {
  const findings: string[] = [];
  if ((await inputDigest(evidence.inputs)) !== evidence.hash) {
    findings.push("The list of what was typed on Evidence was changed: its SHA-256 is another one than stated.");
  }
  const names = new Set([...inputNames(specs), ...evidence.inputs.map(({ name }) => name)]);
  const known = [...names].filter((name) => areaOfInput(book, name) !== null);
  const typed = [...typedInputs(book, known, []), ...paintedInputs(book)];
  const now = new Map(typed.map((input) => [keyOf(input), input]));
  for (const listed of evidence.inputs) {
    const here = now.get(keyOf(listed));
    now.delete(keyOf(listed));
    if (listed.name === PAINTED && samePaint(here?.value, listed.value)) continue;
    if (differs(here?.value ?? null, listed.value)) {
      findings.push(
        `${whatOf(book, listed)} was ${statedWords(listed.value)} when the copy was made and is ${statedWords(here?.value ?? null)}.`,
      );
    }
  }
  for (const added of now.values()) {
    findings.push(`${whatOf(book, added)} was blank when the copy was made and is ${statedWords(added.value)}.`);
  }
  return findings;
}

/** Where a line of the Evidence sheet's list of formulas leads to. */
export function evidencePlace(place: string): { sheet: string; address: string; key: string } | null {
  const area = areaOf(place, "");
  if (!area || area.sheet === "") return null;
  const address = place
    .slice(place.lastIndexOf("!") + 1)
    .replaceAll("$", "")
    .toUpperCase();
  return { sheet: area.sheet, address, key: `${area.sheet}!${address}` };
}
