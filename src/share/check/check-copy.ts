import type { Stated } from "../../cells/stated";
import { AUDIT_SHEETS } from "../../workbook/audit/audit";
import { COVERAGE_PART } from "../../workbook/audit/coverage/alone";
import { COVERAGE } from "../../workbook/audit/coverage/coverage";
import { copyCodeSentence } from "../../workbook/audit/report/copy-code";
import { earlierSheets, newsSince } from "../../workbook/earlier/earlier-sheets";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { NURSERY_SHEETS } from "../../workbook/nursery/nursery-plan";
import { cellsIn, type FileBook, namedArea, openBook } from "../../xlsx/parts/workbook-file";
import { shortCode } from "../copy/digest";
import { evidenceOf } from "../copy/evidence";
import { EVIDENCE, namedValue } from "../copy/evidence-rows";
import { paintedCells } from "../copy/painted-coverage";
import type { CopyReport } from "../copy-report";
import { auditFigures, type Recomputed } from "../figures/audit-figures";
import { AuditInputs } from "../figures/audit-inputs";
import { auditLine } from "../figures/audit-line";
import { earlierFigures } from "../figures/earlier-figures";
import { grouped, harmlessOnly, saying } from "../finding";
import { holdsPlan, holdsSheets, knownSheets, planNews } from "../known-sheets";
import { fileLooks } from "../looks/cells/file-looks";
import { lookFindings } from "../looks/look-check";
import { exampleRemarks } from "../plan/example-remarks";
import { checkedPlan } from "../plan/plan-answers";
import { ownReport } from "../report/own-report";
import { mustBeCalculated, wrongReading } from "./calculated";
import { calledFigures } from "./called-figures";
import { factsOf } from "./copy-facts";
import { inputFindings } from "./evidence-check";
import { evidenceFindings, evidenceOwn, rebuiltEvidence } from "./evidence-rebuilt";
import { impossibleFindings } from "./impossible-figures";
import { keptFindings } from "./kept-check";
import { remainingCalls, replacedFindings, replacedKeys, replacedValues } from "./replaced-check";
import { sentenceOf } from "./sentence";
import { figuresOf } from "./stated-figures";
import { templateFindings } from "./template-check";
import { valueFindings } from "./value-check";
import { versionFindings } from "./version-check";

/** Said of an audit that is no share copy, which accuses nobody. */
const NOT_A_COPY =
  "This is an audit, not a share copy: it has no code and no sheet Evidence, so what was changed in it cannot be told.";
const NOT_A_COPY_OF_A_PLAN =
  "This is a nursery plan, not a share copy: it has no code and no sheet Evidence, so what was changed in it cannot be told.";
const NO_EVIDENCE = "There is no sheet Evidence, so what was changed since the copy was made cannot be told.";
/** A painted Coverage sheet is looked at in any workbook. */
const COVERAGE_ALONE: readonly SheetSpec[] = [COVERAGE_PART];

/** Why figures cannot be given, in words; "" where readings can give them. */
function whyNotGiven(book: FileBook): string {
  const area = namedArea(book, "Cans_Readings");
  if (!area) return "";
  const read = cellsIn(book, area).map(({ address, cell }) => ({ address, value: cell.error ?? cell.value }));
  return wrongReading(read, area.sheet);
}

const oldCodeWords = (old: string, code: string): string[] =>
  old === "" ? [] : [`Its pages have the code ${old} of the copy as it was made; what is typed in it now has ${code}.`];

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
  const news = [newsSince(version), planNews(book)].filter(Boolean).join(" ");
  return { ...report, news };
}

async function checkedBy(
  book: FileBook,
  specs: readonly SheetSpec[],
  earlier: boolean,
): Promise<Omit<CopyReport, "news">> {
  mustBeCalculated(book);
  const evidence = evidenceOf(book);
  const isAudit = specs.some(({ name }) => name === AUDIT_SHEETS[1]!.name) && holdsSheets(book, specs);
  const isPlan = specs.includes(NURSERY_SHEETS[0]!) && holdsPlan(book);
  const isKnown = isAudit || isPlan;
  const figuresFrom = earlier ? figuresOfEarlier : auditFigures;
  const recomputed = isAudit ? figuresFrom(book, specs) : { figures: new Map<string, Stated>(), problem: "" };
  const looks = fileLooks(book);
  const plan = isPlan ? checkedPlan(book, looks) : { figures: [], findings: [] };
  const figures = [
    ...figuresOf(book, specs, recomputed.figures, looks),
    ...plan.figures,
    ...(evidence ? calledFigures(book, evidence, looks) : []),
  ];
  const painted = paintedCells(book);
  const known = isKnown ? specs : painted ? COVERAGE_ALONE : [];
  const own = new Set(isKnown ? specs.map(({ name }) => name) : []);
  const replaced = new Set(evidence ? replacedKeys(evidence, own) : []);
  const paintedKeys = [...(painted?.keys() ?? [])].map((address) => `${COVERAGE.name}!${address}`);
  const { findings: typed, typed: inputs, digest } = await inputFindings(book, evidence, specs);
  const code = shortCode(digest);
  const given = new Map([
    ...(evidence ? [["Copy_Code", copyCodeSentence(shortCode(evidence.hash))] as const] : []),
    ...exampleRemarks(book),
  ]);
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
      : [
          isKnown
            ? saying("added", EVIDENCE, isAudit ? NOT_A_COPY : NOT_A_COPY_OF_A_PLAN)
            : saying("changed", EVIDENCE, NO_EVIDENCE),
        ]),
    ...(evidence ? replacedFindings(book, evidence, own) : []),
    ...impossibleFindings(book, specs),
    ...(isAudit ? keptFindings(book) : []),
    ...plan.findings,
    ...template,
    ...remainingCalls(book),
    ...(changedTyped ? [] : values),
    ...(earlier
      ? []
      : lookFindings(
          book,
          known,
          rebuilt && isKnown ? [evidenceOwn(rebuilt, evidence?.inputs.length ?? 0)] : [],
          evidence ? shortCode(evidence.hash) : "",
        )),
  ]);
  const statedCode = evidence ? shortCode(evidence.hash) : code;
  const oldCode = statedCode === code ? "" : statedCode;
  const follows = changedTyped ? [...oldCodeWords(oldCode, code), ...grouped(values).map(({ text }) => text)] : [];
  const sentence = sentenceOf(figures, findings, follows.length, whyNotGiven(book));
  const agrees = harmlessOnly(findings) && figures.every((figure) => figure.agrees);
  return {
    facts: factsOf(book, evidence, isAudit, holdsPlan(book)),
    line: recomputed.figures.size > 0 ? auditLine(new AuditInputs(book), recomputed.figures) : null,
    figures,
    findings,
    follows,
    code: isKnown || evidence ? code : "",
    oldCode,
    agrees,
    sentence,
    own: isAudit && !earlier ? ownReport(book, specs, figures, { code, oldCode, agrees, sentence, findings }) : null,
  };
}

/**
 * Checks a copy from anywhere against what its readings give.
 *
 * @param file An .xlsx workbook; nothing in it is calculated, and nothing outside it is looked up
 * @param specs The sheets that it is held against; left out: the audit's, the nursery plan's or both, as it holds them
 * @returns Each figure as stated and as recomputed by our own computation, and all else that is not as it should be
 * @throws InputError if the file is no .xlsx workbook, or is broken, locked or larger than a workbook may be
 */
export async function checkCopy(file: Uint8Array, specs?: readonly SheetSpec[]): Promise<CopyReport> {
  const book = openBook(file);
  return checkBook(book, specs ?? knownSheets(book));
}
