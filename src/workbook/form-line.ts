import type { CellSpec } from "./sheet-spec";

/** What stands on one line of a form. */
export interface FormLine extends Omit<CellSpec, "at"> {
  label: string;
  unit?: string;
  note?: string;
}

/** A line of a form: label in column A, value in B, unit in C and what is meant in D. */
export function formLine(row: number, { label, unit, note, ...value }: FormLine): CellSpec[] {
  return [
    { at: `A${row}`, kind: "label", value: label },
    { at: `B${row}`, ...value },
    ...(unit ? [{ at: `C${row}`, kind: "unit" as const, value: unit }] : []),
    ...(note ? [{ at: `D${row}`, kind: "note" as const, value: note }] : []),
  ];
}
