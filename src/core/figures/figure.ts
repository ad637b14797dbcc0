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
  /** What it is, in the room that the Report has. */
  readonly brief?: string;
  /** What it is and how it is read, as the sheet Results says below it. */
  readonly note?: string;
  /** Author, title, year; or "common practice, no source". */
  readonly source: string;
  /** The worksheet function that gives it, without `CANFALL.`; its native form is the twin of that name. */
  readonly worksheetFunction?: string;
}

/** `CU (Christiansen) [%]` */
export const withUnit = ({ name, unit }: Pick<Figure, "name" | "unit">): string => (unit ? `${name} [${unit}]` : name);

/** `MAR [mm/h]` */
export const shortWithUnit = ({ short, unit }: Pick<Figure, "short" | "unit">): string =>
  withUnit({ name: short, unit });

/** `DU, low quarter`: the name as a heading of a column has it. */
export const asHeading = ({ name }: Pick<Figure, "name">): string => name.replace(/ \((.*)\)$/, ", $1");

/** The ends within which a figure of another audit may be typed: its own, where it has them. */
export const typedEnds = ({
  least = -1000,
  most = 1000,
}: Pick<Figure, "least" | "most">): readonly [number, number] => [least, most];

/** A spreadsheet's number format with the figure's digits: `0.0`. */
export const numberFormat = ({ digits }: Pick<Figure, "digits">): string =>
  digits > 0 ? `0.${"0".repeat(digits)}` : "0";

/** The number format of a change of the figure: `+0.0;-0.0;0.0`. */
export const changeFormat = (figure: Pick<Figure, "digits">): string => {
  const format = numberFormat(figure);
  return `+${format};-${format};${format}`;
};
