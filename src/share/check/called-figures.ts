import { caughtDepth } from "../../core/application/depth";
import { caughtRate, headRate } from "../../core/application/rate";
import { runTime } from "../../core/application/run-time";
import { annualCost } from "../../core/cost/price";
import { annualWater } from "../../core/cost/water";
import { InputError } from "../../core/errors";
import { mean } from "../../core/readings";
import { christiansen } from "../../core/uniformity/christiansen";
import { distributionUniformity } from "../../core/uniformity/distribution";
import { multiplier, parseBasis } from "../../core/uniformity/multiplier";
import { patchSchedulingCoefficient } from "../../core/uniformity/patch";
import { weightedChristiansen, weightedDistribution, weightedMean } from "../../core/uniformity/weighted";
import { areasAt } from "../../workbook/form/twins";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { argumentsOf, closing, ourName, tokensOf } from "../calls";
import type { Evidence } from "../copy/evidence";
import type { Figure } from "../copy-report";
import type { FileLooks } from "../looks/cells/file-looks";
import { shownText } from "../looks/cells/shown";
import { sameValue } from "./agreement";
import { type CalledReadings, readings, type Scalar, scalar } from "./call-values";
import { evidencePlace } from "./evidence-check";

type Compute = (r: CalledReadings, ...rest: Scalar[]) => number;

function given(value: Scalar): number {
  if (typeof value !== "number") throw new InputError("argument", "be a number", value);
  return value;
}

const unitOf = (mouth: Scalar) => (String(mouth).trim().toLowerCase() === "mm" ? 1 : caughtDepth(1, given(mouth)));
const rate = ({ values, areas }: CalledReadings, minutes: Scalar, mouth: Scalar) =>
  caughtRate((areas ? weightedMean(values, areas) : mean(values, 1)) * unitOf(mouth), given(minutes));
const times = ({ values, areas }: CalledReadings, basis: Scalar) =>
  multiplier(values, parseBasis(basis ?? "can"), areas);
const water: Compute = (r, area, depth, days, basis, share) =>
  annualWater(given(area), given(depth), given(days), times(r, basis), share === undefined ? 1 : given(share));

const FUNCTIONS: Readonly<Record<string, Compute>> = {
  "CU.CHRISTIANSEN": ({ values, areas }) => (areas ? weightedChristiansen(values, areas) : christiansen(values)),
  "DU.QUARTER": ({ values, areas }) => (areas ? weightedDistribution(values, areas) : distributionUniformity(values)),
  "SC.CAN": (r) => times(r, "can"),
  "SC.QUARTER": (r) => times(r, "quarter"),
  "SC.SHARE": (r, share) => times(r, given(share)),
  "SC.PATCH": ({ values, ...shape }, share) =>
    patchSchedulingCoefficient({ ...shape, values: Float64Array.from(values) }, given(share)),
  MAR: rate,
  RUNTIME: (r, minutes, mouth, depth, basis) => runTime(given(depth), rate(r, minutes, mouth), times(r, basis)),
  "WATER.ANNUAL": water,
  "COST.ANNUAL": (r, area, depth, days, price, basis, share) =>
    annualCost(water(r, area, depth, days, basis, share), given(price)),
};

/** The value of a formula that is one call of the add-in and nothing else; null where it cannot be recomputed. */
function recomputed(book: FileBook, sheet: string, formula: string): number | null {
  const tokens = tokensOf(formula);
  const name = ourName(tokens[0]) ?? "";
  if (closing(tokens, 1) !== tokens.length - 1) return null;
  const [first, ...rest] = argumentsOf(tokens.slice(2, -1));
  const scalars = rest.map((argument) => scalar(book, argument, sheet));
  try {
    if (name === "RATE.HEAD") return headRate(given(scalar(book, first, sheet)), given(scalars[0]), given(scalars[1]));
    const compute = Object.hasOwn(FUNCTIONS, name) ? FUNCTIONS[name] : undefined;
    const cans = readings(book, first, rest[areasAt(name) - 1], sheet);
    return compute && cans ? compute(cans, ...scalars) : null;
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

/** The cells whose formulas called the add-in, recomputed from what those formulas read, as far as they were one call. */
export function calledFigures(book: FileBook, { formulas }: Evidence, { cells: looks }: FileLooks): Figure[] {
  return formulas.flatMap(({ place, old }) => {
    const at = evidencePlace(place);
    const value = at && recomputed(book, at.sheet, old);
    if (!at || value === null) return [];
    const cell = book.sheets.find(({ name }) => name === at.sheet)?.cells.get(at.address);
    const stated = cell?.error ?? cell?.value ?? null;
    const format = looks[Number(cell?.given.get("s") ?? 0)]?.format ?? "General";
    const shown = cell?.error ?? shownText(stated, format);
    return [
      {
        name: place,
        place,
        label: old,
        unit: "",
        stated,
        recomputed: value,
        shown,
        format: "General",
        agrees: sameValue(stated, value),
      },
    ];
  });
}
