/** Something that is typed in: its cell's defined name leads to it, wherever it is asked. */
export interface Entry {
  readonly label: string;
  /** "" where it has none. */
  readonly unit: string;
  /** What a sheet's column of units says. */
  readonly unitWords: string;
  /** What an error calls it. */
  readonly parameter: string;
  /** The ends that it may reach. */
  readonly least: number;
  readonly most: number;
}

export const entry = (
  label: string,
  parameter: string,
  unit: string,
  [least, most]: readonly [least: number, most: number],
  unitWords = unit,
): Entry => ({ label, parameter, unit, unitWords, least, most });

/** `Bed width [m]` */
export const entryLabel = ({ label, unit }: Entry): string => (unit ? `${label} [${unit}]` : label);
