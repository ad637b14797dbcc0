import type { Limit } from "../../core/figures/limits";
import { MEASURES } from "../../core/figures/measures";
import { type CellsOf, firstOf, numberOf } from "../bed/cells-of";

const MEASURE_OF = {
  MAR: MEASURES.MAR.name,
  CU: MEASURES.CU.name,
  DU: MEASURES.DU.name,
  SC: MEASURES.SC_CAN.name,
  SCQ: MEASURES.SC_QUARTER.name,
} as const;

type Measured = keyof typeof MEASURE_OF;

const MEASURED = Object.keys(MEASURE_OF) as Measured[];
const PARTS = ["Low", "High", "Text", "Source"] as const;
/** The cells that hold the limits in use. */
export const LIMIT_NAMES = MEASURED.flatMap((measured) => PARTS.map((part) => `Limit_${measured}_${part}`));

function limitOf(cells: CellsOf, measured: Measured): Limit[] {
  const [low, high] = [numberOf(cells, `Limit_${measured}_Low`), numberOf(cells, `Limit_${measured}_High`)];
  if (low === undefined && high === undefined) return [];
  const words = (part: "Text" | "Source") => String(firstOf(cells, `Limit_${measured}_${part}`) ?? "");
  return [
    {
      measure: MEASURE_OF[measured],
      ...(low !== undefined && { low }),
      ...(high !== undefined && { high }),
      text: words("Text"),
      source: words("Source"),
      year: "",
    },
  ];
}

/** The limits of an audit's own sheet of them. */
export const limitsIn = (cells: CellsOf): Limit[] => MEASURED.flatMap((measured) => limitOf(cells, measured));
