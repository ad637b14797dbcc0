/** A figure that an audit states: what labels, units, definitions and sources are made from wherever it is shown. */
export interface Figure {
  /** Its name in full. */
  readonly name: string;
  /** Its name in tight places: a heading, a trend, the register. */
  readonly short: string;
  /** "" for a ratio. */
  readonly unit: string;
  /** Digits behind the point where it is shown. */
  readonly digits: number;
  /** The ends that it can reach; left out where there is none. */
  readonly least?: number;
  readonly most?: number;
  /** What it is, in words and symbols. */
  readonly definition: string;
  /** Author, title, year; or "common practice, no source". */
  readonly source: string;
  /** The worksheet function that gives it, without `CANFALL.`; its native form is the twin of that name. */
  readonly worksheetFunction?: string;
}

/** `CU (Christiansen) [%]` */
export const withUnit = ({ name, unit }: Pick<Figure, "name" | "unit">): string => (unit ? `${name} [${unit}]` : name);

/** A spreadsheet's number format with the figure's digits: `0.0`. */
export const numberFormat = ({ digits }: Figure): string => (digits > 0 ? `0.${"0".repeat(digits)}` : "0");
