import { cellAt } from "../../cells/places";
import { areaOf, placeName } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { COVERAGE } from "../../workbook/audit/coverage/coverage";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { inputDigest } from "../copy/digest";
import type { Evidence } from "../copy/evidence";
import { areaOfInput, inputNames, type TypedInput, typedInputs } from "../copy/input-list";
import { PAINTED, paintedInputs, samePaint } from "../copy/painted-coverage";
import { type Finding, saying } from "../finding";
import { formatAt } from "../looks/cells/formats";
import { readable } from "../looks/cells/shown";
import { strangeSign } from "../looks/sheets/look-alike";
import { sameValue } from "./agreement";

type Placed = { name: string; row: number; column: number; value: Stated };

const keyOf = ({ name, row, column }: Placed) => `${name}\n${row}\n${column}`;
const differs = (now: Stated, listed: Stated) => typeof now !== typeof listed || !sameValue(now, listed);

/** A value by its cell, and by what it is: `The reading in Cans!G10 (row 5, column 1 of the cans)`. */
function whatOf(book: FileBook, { name, row, column }: Placed): string {
  if (name === PAINTED) return `What ${COVERAGE.name}!${cellAt(row, column)} draws on`;
  const area = areaOfInput(book, name);
  const place = area ? placeName(area.sheet, cellAt(area.top + row - 1, area.left + column - 1)) : name;
  if (name === "Cans_Readings") return `The reading in ${place} (row ${row}, column ${column} of the cans)`;
  const what = name.startsWith("Limit") ? "The limit" : "What was typed";
  return `${what} in ${place}${area && book.names.has(name) ? ` (${name})` : ""}`;
}

/** The cell of a line of what was typed, as `Cans!G10`. */
function cellOf(book: FileBook, { name, row, column }: Placed): string {
  if (name === PAINTED) return `${COVERAGE.name}!${cellAt(row, column)}`;
  const area = areaOfInput(book, name);
  return area ? placeName(area.sheet, cellAt(area.top + row - 1, area.left + column - 1)) : name;
}

function typedFinding(
  book: FileBook,
  specs: readonly SheetSpec[],
  listed: Placed,
  before: Stated,
  now: Stated,
): Finding {
  const where = cellOf(book, listed);
  const format = formatAt(specs, where.replaceAll("'", ""));
  const words = (value: Stated) => (value === null || value === "" ? "blank" : `"${readable(value, format)}"`);
  const [was, is] = [before, now].map((value) => readable(value, format)) as [string, string];
  const sign = typeof now === "string" ? strangeSign(now) : "";
  const said = `${whatOf(book, listed)} was ${words(before)} when the copy was made and is ${words(now)}${sign ? `: ${sign}` : ""}.`;
  return saying("changed", where, said, was, is);
}

/** Whether the list on Evidence is the one that was hashed, sorted or as it was. */
async function listFindings({ inputs, hash }: Evidence, typed: readonly TypedInput[]): Promise<Finding[]> {
  if ((await inputDigest(inputs)) === hash) return [];
  const order = new Map(typed.map((one, index) => [keyOf(one), index]));
  const placeOf = (one: Placed) => order.get(keyOf(one)) ?? order.size;
  const sorted = [...inputs].sort((one, other) => placeOf(one) - placeOf(other));
  if ((await inputDigest(sorted)) === hash) {
    return [
      saying(
        "added",
        "Evidence",
        "The list of what was typed on Evidence was sorted; in its old order it keeps its SHA-256.",
      ),
    ];
  }
  return [
    saying(
      "changed",
      "Evidence",
      "The list of what was typed on Evidence was changed: its SHA-256 is another one than stated.",
      hash.slice(0, 16),
      (await inputDigest(inputs)).slice(0, 16),
    ),
  ];
}

/** What was typed, with the value of the list where it is the same: programs round the last of 15 digits in two ways. */
function asListed(typed: readonly TypedInput[], listed: readonly Placed[]): TypedInput[] {
  const values = new Map(listed.map((one) => [keyOf(one), one.value]));
  return typed.map((input) => {
    const value = values.get(keyOf(input));
    const same = typeof value === "number" && typeof input.value === "number" && sameValue(value, input.value);
    return same ? { ...input, value } : input;
  });
}

/** What was typed, as the Evidence sheet lists it, against its own hash and against the sheets. */
export async function inputFindings(
  book: FileBook,
  evidence: Evidence | null,
  specs: readonly SheetSpec[],
): Promise<{ findings: Finding[]; typed: TypedInput[]; digest: string }> {
  const findings: Finding[] = [];
  const names = new Set([...inputNames(specs), ...(evidence?.inputs ?? []).map(({ name }) => name)]);
  const known = [...names].filter((name) => areaOfInput(book, name) !== null);
  const typed = asListed([...typedInputs(book, known, []), ...paintedInputs(book)], evidence?.inputs ?? []);
  const digest = await inputDigest(typed);
  if (!evidence) return { findings, typed, digest };
  findings.push(...(await listFindings(evidence, typed)));
  const now = new Map(typed.map((input) => [keyOf(input), input]));
  for (const listed of evidence.inputs) {
    const here = now.get(keyOf(listed));
    now.delete(keyOf(listed));
    if (listed.name === PAINTED && samePaint(here?.value, listed.value)) continue;
    if (differs(here?.value ?? null, listed.value)) {
      findings.push(typedFinding(book, specs, listed, listed.value, here?.value ?? null));
    }
  }
  for (const added of now.values()) {
    findings.push(typedFinding(book, specs, added, null, added.value));
  }
  return { findings, typed, digest };
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
