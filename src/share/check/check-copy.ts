import { isoDay } from "../../cells/day-number";
import { cellAt } from "../../cells/places";
import { placeName } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import { AUDIT_SHEETS } from "../../workbook/audit/audit";
import { COVERAGE_PART } from "../../workbook/audit/coverage/alone";
import { COVERAGE } from "../../workbook/audit/coverage/coverage";
import { copyCodeSentence } from "../../workbook/audit/report/copy-code";
import { earlierSheets, newsSince } from "../../workbook/earlier/earlier-sheets";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { cellsIn, type FileBook, namedArea, openBook } from "../../xlsx/parts/workbook-file";
import { shortCode } from "../copy/digest";
import { type Evidence, evidenceOf } from "../copy/evidence";
import { EVIDENCE, namedValue } from "../copy/evidence-rows";
import { paintedCells } from "../copy/painted-coverage";
import type { CopyFacts, CopyReport, Figure } from "../copy-report";
import { auditFigures, type Recomputed } from "../figures/audit-figures";
import { AuditInputs } from "../figures/audit-inputs";
import { auditLine } from "../figures/audit-line";
import { earlierFigures } from "../figures/earlier-figures";
import { grouped, harmlessOnly, saying } from "../finding";
import { type FileLooks, fileLooks } from "../looks/file-looks";
import { lookFindings } from "../looks/look-check";
import { shownAt } from "../looks/shown-at";
import { ownReport } from "../report/own-report";
import { agrees, NOT_GIVEN } from "./agreement";
import { mustBeCalculated, wrongReading } from "./calculated";
import { calledFigures } from "./called-figures";
import { inputFindings } from "./evidence-check";
import { evidenceFindings, evidenceOwn, rebuiltEvidence } from "./evidence-rebuilt";
import { figureLabel } from "./figure-label";
import { impossibleFindings } from "./impossible-figures";
import { keptFindings } from "./kept-check";
import { knownWords } from "./known-words";
import { remainingCalls, replacedFindings, replacedKeys, replacedValues } from "./replaced-check";
import { sentenceOf } from "./sentence";
import { templateFindings } from "./template-check";
import { valueFindings } from "./value-check";
import { versionFindings } from "./version-check";

/** Said of an audit that is no share copy, which accuses nobody. */
const NOT_A_COPY =
  "This is an audit, not a share copy: it has no code and no sheet Evidence, so what was changed in it cannot be told.";
const NO_EVIDENCE = "There is no sheet Evidence, so what was changed since the copy was made cannot be told.";
/** A workbook with so many of the audit's sheets is one; a single Coverage sheet can be in any. */
const FEWEST_SHEETS = 2;
/** A painted Coverage sheet is looked at in any workbook. */
const COVERAGE_ALONE: readonly SheetSpec[] = [COVERAGE_PART];

/** What the cell behind a name says, errors by their name. */
function statedAt(book: FileBook, name: string): Stated {
  const area = namedArea(book, name);
  const cell = area && cellsIn(book, { ...area, bottom: area.top, right: area.left })[0]?.cell;
  return cell ? (cell.error ?? cell.value) : null;
}

function figuresOf(
  book: FileBook,
  specs: readonly SheetSpec[],
  recomputed: ReadonlyMap<string, Stated>,
  looks: FileLooks,
): Figure[] {
  const words = knownWords(specs);
  return [...recomputed].flatMap(([name, value]) => {
    const area = namedArea(book, name);
    if (!area) return [];
    const stated = statedAt(book, name);
    const shown = value ?? NOT_GIVEN;
    const place = placeName(area.sheet, cellAt(area.top, area.left));
    const seen = shownAt(book, area, looks);
    return [
      {
        name,
        place,
        ...figureLabel(specs, name),
        stated,
        recomputed: shown,
        shown: seen,
        agrees: agrees(stated, value, words),
      },
    ];
  });
}

/** Why figures cannot be given, in words; "" where readings can give them. */
function whyNotGiven(book: FileBook): string {
  const area = namedArea(book, "Cans_Readings");
  if (!area) return "";
  const read = cellsIn(book, area).map(({ address, cell }) => ({ address, value: cell.error ?? cell.value }));
  return wrongReading(read, area.sheet);
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
  const report = await checkedBy(book, earlier ?? present, earlier !== null);
  return { ...report, news: newsSince(version) ?? "" };
}

async function checkedBy(
  book: FileBook,
  specs: readonly SheetSpec[],
  earlier: boolean,
): Promise<Omit<CopyReport, "news">> {
  mustBeCalculated(book);
  const evidence = evidenceOf(book);
  const audited = specs.filter((spec) => book.sheets.some(({ name }) => name === spec.name));
  const isAudit = audited.length >= FEWEST_SHEETS;
  const figuresFrom = earlier ? figuresOfEarlier : auditFigures;
  const recomputed = isAudit ? figuresFrom(book, specs) : { figures: new Map<string, Stated>(), problem: "" };
  const looks = fileLooks(book);
  const figures = [
    ...figuresOf(book, specs, recomputed.figures, looks),
    ...(evidence ? calledFigures(book, evidence, looks) : []),
  ];
  const painted = paintedCells(book);
  const known = isAudit ? specs : painted ? COVERAGE_ALONE : [];
  const own = new Set(isAudit ? specs.map(({ name }) => name) : []);
  const replaced = new Set(evidence ? replacedKeys(evidence, own) : []);
  const paintedKeys = [...(painted?.keys() ?? [])].map((address) => `${COVERAGE.name}!${address}`);
  const { findings: typed, typed: inputs, digest } = await inputFindings(book, evidence, specs);
  const code = shortCode(digest);
  const given = new Map(evidence ? [["Copy_Code", copyCodeSentence(shortCode(evidence.hash))]] : []);
  const template = templateFindings(book, known, new Set([...replaced, ...paintedKeys]), given);
  const rebuilt = evidence && !earlier ? rebuiltEvidence(book, evidence, inputs, digest) : null;
  const onEvidence = rebuilt ? evidenceFindings(book, rebuilt, typed.length > 0) : [];
  const values = [
    ...(evidence ? replacedValues(book, evidence) : []),
    ...valueFindings(book, known, recomputed.figures, { replaced, painted }),
    ...onEvidence,
  ];
  const differs = template.length + values.length > 0 || figures.some((figure) => !figure.agrees);
  const changedTyped = typed.some((one) => one.class !== "added");
  const findings = grouped([
    ...(differs ? versionFindings(book, evidence) : []),
    ...(recomputed.problem === ""
      ? []
      : [saying("changed", "the file", `The figures cannot be recomputed: ${recomputed.problem}.`)]),
    ...(evidence
      ? typed
      : [isAudit ? saying("added", EVIDENCE, NOT_A_COPY) : saying("changed", EVIDENCE, NO_EVIDENCE)]),
    ...(evidence ? replacedFindings(book, evidence, own) : []),
    ...impossibleFindings(book, specs),
    ...(isAudit ? keptFindings(book) : []),
    ...template,
    ...remainingCalls(book),
    ...(changedTyped ? [] : values),
    ...(earlier
      ? []
      : lookFindings(
          book,
          known,
          rebuilt && isAudit ? [evidenceOwn(rebuilt)] : [],
          evidence ? shortCode(evidence.hash) : "",
        )),
  ]);
  const follows = changedTyped ? grouped(values).map(({ text }) => text) : [];
  const sentence = sentenceOf(figures, findings, follows.length, whyNotGiven(book));
  return {
    facts: factsOf(book, evidence, isAudit),
    line: recomputed.figures.size > 0 ? auditLine(new AuditInputs(book), recomputed.figures) : null,
    figures,
    findings,
    follows,
    code: isAudit || evidence ? code : "",
    agrees: harmlessOnly(findings) && figures.every((figure) => figure.agrees),
    sentence,
    own: isAudit && !earlier ? ownReport(book, specs, figures, { code, sentence, findings }) : null,
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
