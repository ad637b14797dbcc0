import { BUILT_IN_LIMITS, type Limit } from "../../core/figures/limits";
import { MEASURES } from "../../core/figures/measures";
import { type NamedCells, namedCells, numberIn, textIn } from "../workbook/named";
import type { Reading } from "../workbook/reading";

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
const NAMES = MEASURED.flatMap((measured) => PARTS.map((part) => `Limit_${measured}_${part}`));

function limitOf(found: NamedCells, measured: Measured): Limit[] {
  const part = (name: (typeof PARTS)[number]) => found[`Limit_${measured}_${name}`];
  const [low, high] = [numberIn(part("Low")), numberIn(part("High"))];
  if (low === undefined && high === undefined) return [];
  return [
    {
      measure: MEASURE_OF[measured],
      ...(low !== undefined && { low }),
      ...(high !== undefined && { high }),
      text: textIn(part("Text")),
      source: textIn(part("Source")),
      year: "",
    },
  ];
}

/** The limits of the workbook's own sheet of them; the built-in ones where it has none. */
export const LIMITS: Reading<readonly Limit[]> = {
  wants: { names: ["Limits_Table", ...NAMES] },
  read: (snapshot) => {
    if (!snapshot.named("Limits_Table")) return BUILT_IN_LIMITS;
    const found = namedCells(snapshot, NAMES);
    return MEASURED.flatMap((measured) => limitOf(found, measured));
  },
};
