/** What a cell may state: null where it is blank or missing. */
export type Stated = number | string | boolean | null;

/** A figure of a copy beside what its readings give. */
export interface Figure {
  /** Its defined name, or `Sheet!A1` for a cell that has none. */
  name: string;
  label: string;
  /** "" where it has none. */
  unit: string;
  /** What the file says. */
  stated: Stated;
  /** What the readings give; a text such as "needs readings" where they cannot give it. */
  recomputed: Stated;
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

/** What the check of a copy found. */
export interface CopyReport {
  facts: CopyFacts;
  figures: Figure[];
  /** One plain sentence each; none where everything agrees. */
  findings: string[];
  agrees: boolean;
  /** What the check says in one or two plain sentences. */
  sentence: string;
}

/** A file of the register: its report, or why there is none. */
export interface CheckedFile {
  /** The file's name. */
  name: string;
  report: CopyReport | null;
  /** Why it could not be read; "" where it could. */
  problem: string;
}
