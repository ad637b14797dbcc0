import type { Stated } from "../cells/stated";
import type { RegisteredAudit } from "../core/register/registered-audit";
import type { SheetSpec } from "../workbook/form/sheet-spec";
import type { Finding } from "./finding";

/** A figure of a copy beside what its readings give. */
export interface Figure {
  /** Its defined name, or `Sheet!A1` for a cell that has none. */
  name: string;
  /** Where it is, `Sheet!A1`. */
  place: string;
  label: string;
  /** "" where it has none. */
  unit: string;
  /** What the file says. */
  stated: Stated;
  /** What the readings give; a text such as "needs readings" where they cannot give it. */
  recomputed: Stated;
  /** What its cell shows a reader, in its format. */
  shown: string;
  /** The number format that the workbook gives it. */
  format: string;
  agrees: boolean;
}

/** What a copy says of itself. */
export interface CopyFacts {
  site: string;
  block: string;
  /** Day of the test, `2026-11-25`, or "". */
  date: string;
  /** What the file is, in words: a share copy of a day, or an audit workbook. */
  kind: string;
}

/** What a register keeps of an audit, its figures as the audit puts them first; null where it cannot give one. */
export interface AuditLine extends Omit<RegisteredAudit, "site" | "block" | "day"> {
  /** Leaching included. */
  multiplier: number | null;
  /** Of all beds on the valve, as water and area [L/min]. */
  flow: number | null;
}

/** What the check of a copy found. */
export interface CopyReport {
  facts: CopyFacts;
  /** For a register; null where the file is no audit or its figures cannot be recomputed. */
  line: AuditLine | null;
  figures: Figure[];
  /** None where everything agrees but for what was put beside; figures that do not agree are apart. */
  findings: Finding[];
  /** Where what was typed has changed since the copy was made: what no longer fits it, one sentence each. */
  follows: string[];
  agrees: boolean;
  /** What the check says in one or two plain sentences. */
  sentence: string;
  /** First 16 digits of the SHA-256 over what was typed, in groups of four: the same on paper and in the file. */
  code: string;
  /** The code on its pages, where what was typed has another one by now; "" where it has not. */
  oldCode: string;
  /** The authority's own report, drawn from values calculated here; null where the file is no audit. */
  own: SheetSpec | null;
  /** What is new since the version of the file; "" where it is of the present one. */
  news: string;
}

/** A file of the register: its report, or why there is none. */
export interface CheckedFile {
  /** The file's name. */
  name: string;
  report: CopyReport | null;
  /** Why it could not be read; "" where it could. */
  problem: string;
}
