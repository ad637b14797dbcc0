import type { CanPlan } from "./plan";

/** One can of a plan. */
export interface CanPlace {
  /** Its number on the field sheet, from 1. */
  number: number;
  /** Place across the width and along the length [m]. */
  x: number;
  y: number;
  /** Its column and row, from 0. */
  column: number;
  row: number;
}

/** The cans in the order of walking: across the bed and back, row after row along the length. */
export function canPlaces({ across, along }: Pick<CanPlan, "across" | "along">): CanPlace[] {
  return along.flatMap((y, row) =>
    across.map((_, i) => {
      const column = row % 2 === 0 ? i : across.length - 1 - i;
      return { number: row * across.length + i + 1, x: across[column] as number, y, column, row };
    }),
  );
}
