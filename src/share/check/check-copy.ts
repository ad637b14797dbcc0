import { isoDay } from "../../cells/day-number";
import { cellAt } from "../../cells/places";
import { placeName } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { AUDIT_SHEETS } from "../../workbook/audit/audit";
import { COVERAGE_PART } from "../../workbook/audit/coverage/alone";
import { COVERAGE } from "../../workbook/audit/coverage/coverage";
import { earlierSheets, newsSince } from "../../workbook/earlier/earlier-sheets";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { cellsIn, type FileBook, namedArea, openBook } from "../../xlsx/parts/workbook-file";
import { type Evidence, evidenceOf } from "../copy/evidence";
import { namedValue } from "../copy/evidence-rows";
import { paintedCells } from "../copy/painted-coverage";
import type { CopyFacts, CopyReport, Figure } from "../copy-report";
import { auditFigures, type Recomputed } from "../figures/audit-figures";
import { AuditInputs } from "../figures/audit-inputs";
import { auditLine } from "../figures/audit-line";
import { earlierFigures } from "../figures/earlier-figures";
import { agrees, NOT_GIVEN } from "./agreement";
import { calledFigures } from "./called-figures";
import { causeFindings } from "./cause-check";
import { inputFindings } from "./evidence-check";
import { figureLabel } from "./figure-label";
import { impossibleFindings } from "./impossible-figures";
import { knownWords } from "./known-words";
import { remainingCalls, replacedFindings, replacedKeys, replacedValues } from "./replaced-check";
import { templateFindings } from "./template-check";
import { valueFindings } from "./value-check";
import { versionFindings } from "./version-check";

/** Of one kind. */
const MOST_FINDINGS = 50;
/** Said of an audit that is no share copy. */
export const NO_EVIDENCE = "There is no sheet Evidence, so what was changed since the copy was made cannot be told.";
/** A workbook with so many of the audit's sheets is one; a single Coverage sheet can be in any. */
const FEWEST_SHEETS = 2;
/** A painted Coverage sheet is looked at in any workbook. */
const COVERAGE_ALONE: readonly SheetSpec[] = [COVERAGE_PART];
const MEANING = "This means that the figures follow from these readings, not that the readings are true.";

/** What the cell behind a name says, errors by their name. */
function statedAt(book: FileBook, name: string): Stated {
  const area = namedArea(book, name);
  const cell = area && cellsIn(book, { ...area, bottom: area.top, right: area.left })[0]?.cell;
  return cell ? (cell.error ?? cell.value) : null;
}

function figuresOf(book: FileBook, specs: readonly SheetSpec[], recomputed: ReadonlyMap<string, Stated>): Figure[] {
  const words = knownWords(specs);
  return [...recomputed].flatMap(([name, value]) => {
    const area = namedArea(book, name);
    if (!area) return [];
    const stated = statedAt(book, name);
    const shown = value ?? NOT_GIVEN;
    const place = placeName(area.sheet, cellAt(area.top, area.left));
    return [
      { name, place, ...figureLabel(specs, name), stated, recomputed: shown, agrees: agrees(stated, value, words) },
    ];
  });
}

function factsOf(book: FileBook, evidence: Evidence | null, isAudit: boolean): CopyFacts {
  const words = (name: string) => String(namedValue(book, name) ?? "");
  const day = isoDay(evidence?.day);
  const what = isAudit ? "audit" : "workbook without the audit's sheets";
  return {
    site: words("Site_Name"),
    block: words("Block_Name"),
    date: isoDay(namedValue(book, "Test_Date")),
    kind: evidence ? `share copy of ${day || "an unknown day"}, ${what}` : what,
  };
}

function sentenceOf(figures: readonly Figure[], findings: number, follows: number): string {
  const wrong = figures.filter((figure) => !figure.agrees).length;
  if (figures.length === 0) return "This file has no figure that could be recomputed from readings.";
  if (wrong === 0 && findings === 0) {
    return `All ${figures.length} figures agree with what was recomputed from the readings, to one part in 1,000,000,000. ${MEANING}`;
  }
  const more = follows > 0 ? `, from which ${follows} more ${follows === 1 ? "follows" : "follow"}` : "";
  const said = findings === 1 ? "1 finding" : `${findings} findings`;
  if (wrong === 0) {
    return `All ${figures.length} figures follow from the readings as they are, but there ${findings === 1 ? "is" : "are"} ${said} of what was changed or is not as it should be${more}. ${MEANING}`;
  }
  return `${wrong} of ${figures.length} figures ${wrong === 1 ? "does" : "do"} not agree with what was recomputed from the readings; ${said} beside them${more}. Where figures agree: ${MEANING.charAt(0).toLowerCase()}${MEANING.slice(1)}`;
}

function limited(findings: string[]): string[] {
  const more = findings.length - MOST_FINDINGS;
  return more <= 0 ? findings : [...findings.slice(0, MOST_FINDINGS), `And ${more} more like these.`];
}

/** The figures of an audit of the present version, by our own computation from what was typed. */
const presentFigures = auditFigures;

/** Those of an earlier version, by its own formulas. */
function figuresOfEarlier(book: FileBook, specs: readonly SheetSpec[]): Recomputed {
  const present = auditFigures(book);
  const names = [...present.figures.keys(), "Positions_Uneven"];
  return { ...present, figures: earlierFigures(book, specs, names) };
}

/** The check of a file that was read already: by the sheets of its own version where they are known. */
export async function checkBook(book: FileBook, present: readonly SheetSpec[]): Promise<CopyReport> {
  const version = String(namedValue(book, "Workbook_Version") ?? "");
  const earlier = await earlierSheets(version);
  const report = await checkedBy(book, earlier ?? present, earlier ? figuresOfEarlier : presentFigures);
  return { ...report, news: newsSince(version) ?? "" };
}

async function checkedBy(
  book: FileBook,
  specs: readonly SheetSpec[],
  figuresFrom: (book: FileBook, specs: readonly SheetSpec[]) => Recomputed,
): Promise<Omit<CopyReport, "news">> {
  const evidence = evidenceOf(book);
  const audited = specs.filter((spec) => book.sheets.some(({ name }) => name === spec.name));
  const isAudit = audited.length >= FEWEST_SHEETS;
  const recomputed = isAudit ? figuresFrom(book, specs) : { figures: new Map<string, Stated>(), problem: "" };
  const figures = [...figuresOf(book, specs, recomputed.figures), ...(evidence ? calledFigures(book, evidence) : [])];
  const painted = paintedCells(book);
  const replaced = new Set(evidence ? replacedKeys(evidence) : []);
  const paintedKeys = [...(painted?.keys() ?? [])].map((address) => `${COVERAGE.name}!${address}`);
  const known = isAudit ? specs : painted ? COVERAGE_ALONE : [];
  const typed = evidence ? await inputFindings(book, evidence, specs) : [];
  const template = templateFindings(book, known, new Set([...replaced, ...paintedKeys]));
  const values = [
    ...(evidence ? limited(replacedValues(book, evidence)) : []),
    ...limited(valueFindings(book, known, recomputed.figures, { replaced, painted })),
  ];
  const differs = template.length + values.length > 0 || figures.some((figure) => !figure.agrees);
  const groups = [
    differs ? versionFindings(book, evidence) : [],
    recomputed.problem === "" ? [] : [`The figures cannot be recomputed: ${recomputed.problem}.`],
    evidence ? typed : [NO_EVIDENCE],
    evidence ? replacedFindings(book, evidence) : [],
    impossibleFindings(book, specs),
    isAudit ? causeFindings(book) : [],
    template,
    remainingCalls(book),
  ];
  const follows = typed.length > 0 ? values : [];
  const findings = [...groups.flatMap(limited), ...(typed.length > 0 ? [] : values)];
  return {
    facts: factsOf(book, evidence, isAudit),
    line: recomputed.figures.size > 0 ? auditLine(new AuditInputs(book), recomputed.figures) : null,
    figures,
    findings,
    follows,
    agrees: findings.length === 0 && figures.every((figure) => figure.agrees),
    sentence: sentenceOf(figures, findings.length, follows.length),
  };
}

/**
 * Checks a copy from anywhere against what its readings give.
 *
 * @param file An .xlsx workbook; nothing in it is calculated, and nothing outside it is looked up
 * @param specs The sheets of the audit
 * @returns Each figure as stated and as recomputed by our own computation, and all else that is not as it should be
 * @throws InputError if the file is no .xlsx workbook, or is broken, locked or larger than a workbook may be
 */
export async function checkCopy(file: Uint8Array, specs: readonly SheetSpec[] = AUDIT_SHEETS): Promise<CopyReport> {
  return checkBook(openBook(file), specs);
}
