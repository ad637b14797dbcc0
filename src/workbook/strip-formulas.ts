/** The cells of one column or row of cans in a table of strips. */
export interface StripCells {
  /** Its place [m]. */
  position: string;
  /** How many cans were read in it. */
  cans: string;
  /** Place of the one before it that holds readings, or "". */
  before: string;
  /** Place of the one after it that holds readings, or "". */
  after: string;
  /** Where its strip starts [m]. */
  from: string;
  /** Where its strip ends [m]. */
  to: string;
}

/** The one before, or the one after, that holds readings: found by passing it on from neighbour to neighbour. */
export function nearest(neighbour: StripCells | undefined, way: "before" | "after"): string {
  return neighbour ? `IF(${neighbour.cans}>0,${neighbour.position},${neighbour[way]})` : '""';
}

/** Start of a strip: half-way to the one before, or the edge of the bed; "" where nothing was read. */
export function stripStart({ cans, before, position }: StripCells, ready: string): string {
  return `IF(AND(${ready},${cans}>0),IF(ISNUMBER(${before}),(${before}+${position})/2,0),"")`;
}

/** End of a strip: half-way to the one after, or the other edge of the bed; "" where nothing was read. */
export function stripEnd({ cans, after, position }: StripCells, ready: string, size: string): string {
  return `IF(AND(${ready},${cans}>0),IF(ISNUMBER(${after}),(${position}+${after})/2,${size}),"")`;
}
