import { type BedCauses, causes } from "../../../core/bed/causes/causes";
import { fittedAt, GROUND_SIDE, groundOf } from "../../../core/bed/causes/ground";
import { readBed } from "../../../core/bed/read-bed";
import { verdictOf } from "../../../workbook/bed/bed-verdict";
import { words } from "../../parts/words";
import type { Ask, FittedGround, Said } from "./bed-messages";

/** Reads a bed, quick parts first; the last thing said is that it is done or that it failed. */
export function* bedWork({ input, measured }: Ask): Generator<Said, void> {
  try {
    const found = causes(readBed(input), measured);
    yield { kind: "cause", verdict: verdictOf(found), fitted: fittedGround(found) };
    yield { kind: "done" };
  } catch (error) {
    yield { kind: "failed", message: words(error) };
  }
}

function fittedGround({ bed, causes: [lead] }: BedCauses): FittedGround {
  const fitted = lead!.fitted!;
  const atCans: (number | null)[][] = bed.grid.map((line) => line.map(() => null));
  fittedAt(bed, fitted, bed.cans).forEach((rate, k) => {
    const { row, column } = bed.cans[k]!;
    atCans[row]![column] = rate;
  });
  return { values: fittedAt(bed, fitted, groundOf(bed)), columns: GROUND_SIDE, rows: GROUND_SIDE, atCans };
}
