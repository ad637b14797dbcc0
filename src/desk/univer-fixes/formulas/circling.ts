interface Place {
  subUnitId: string;
  row: number;
  column: number;
}

const placeOf = (sheet: string, row: number, column: number) => `${sheet} ${row} ${column}`;

let known = new Set<string>();

/** The formulas of the running calculation that lie in circles, so that the grid can't calculate them. */
export const circling = {
  know(places: readonly Place[]): void {
    known = new Set(places.map(({ subUnitId, row, column }) => placeOf(subUnitId, row, column)));
  },
  has: (sheet: string, row: number, column: number): boolean =>
    known.size > 0 && known.has(placeOf(sheet, row, column)),
};
