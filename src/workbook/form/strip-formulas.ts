/** The cells of one column or row of cans in a table of strips. */
export interface StripCells {
  /** Its place [m]. */
  position: string;
  /** Place of the one before it that has a place, or "". */
  before: string;
  /** Place of the one after it that has a place, or "". */
  after: string;
  /** Where its strip starts [m]. */
  from: string;
  /** Where its strip ends [m]. */
  to: string;
}

/** The one before, or the one after, that has a place: found by passing it on from neighbour to neighbour. */
export function nearest(neighbour: StripCells | undefined, way: "before" | "after"): string {
  return neighbour ? `IF(ISNUMBER(${neighbour.position}),${neighbour.position},${neighbour[way]})` : '""';
}

/** Start of a strip: half-way to the one before, or the edge of the bed; "" where there is no place. */
export function stripStart({ before, position }: StripCells, size: string): string {
  return `IF(AND(ISNUMBER(${size}),ISNUMBER(${position})),IF(ISNUMBER(${before}),(${before}+${position})/2,0),"")`;
}

/** End of a strip: half-way to the one after, or the other edge of the bed; "" where there is no place. */
export function stripEnd({ after, position }: StripCells, size: string): string {
  return `IF(AND(ISNUMBER(${size}),ISNUMBER(${position})),IF(ISNUMBER(${after}),(${position}+${after})/2,${size}),"")`;
}
