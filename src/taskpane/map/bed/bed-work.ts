import { type BedCauses, causes } from "../../../core/bed/causes/causes";
import { fittedAt, GROUND_SIDE, groundOf } from "../../../core/bed/causes/ground";
import { redrawn } from "../../../core/bed/causes/redraw";
import { nextCans } from "../../../core/bed/interval/next-cans";
import { bedsDrawn, wholeBedOf } from "../../../core/bed/interval/whole-bed";
import { type ReadBed, readBed } from "../../../core/bed/read-bed";
import { InputError } from "../../../core/errors";
import { verdictOf } from "../../../workbook/bed/bed-verdict";
import { words } from "../../parts/task/words";
import type { Ask, FittedGround, Said } from "./bed-messages";

/** Reads a bed, quick parts first; the last thing said is that it is done or that it failed. */
export function* bedWork({ input, measured, slow }: Ask): Generator<Said, void> {
  try {
    const bed = readBed(input);
    const found = causes(bed, measured);
    yield { kind: "cause", verdict: verdictOf(found), fitted: fittedGround(found) };
    if (slow) {
      yield interval(bed);
      for (const redraw of redrawn(bed)) yield { kind: "redrawn", ...redraw };
    }
    yield { kind: "done" };
  } catch (error) {
    yield { kind: "failed", message: words(error) };
  }
}

function interval(bed: ReadBed): Said {
  try {
    const drawn = bedsDrawn(bed);
    return { kind: "interval", whole: wholeBedOf(bed, drawn), next: nextCans(bed, drawn) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { kind: "no interval", why: error.message };
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
