import { type CanField, ratesRead } from "../../core/pattern/can-field";
import { mean as meanOf } from "../../core/readings";
import { figure } from "../parts/figure";
import type { FittedGround } from "./bed/bed-messages";
import { canBands } from "./picture/can-bands";
import { type Band, classBands } from "./picture/class-bands";

/** What of a fitted bed is shown. */
export interface FittedView {
  what: "fitted" | "left";
  fitted: FittedGround;
}

/** What a map draws. */
interface MapView {
  bands: Band[];
  /** Ground that is coloured, where it is not that between cans. */
  ground?: { x: number; y: number; width: number; length: number }[];
  cans: CanField;
  /** What is written beside a can. */
  number: (rate: number) => string;
  said: string;
  /** What the legend counts. */
  rates: ArrayLike<number>;
  of: "cans" | "cells";
  classes?: { heading: string; ranges: readonly string[] };
}

/** The classes as differences from the mean, in the order of the rates' classes. */
const DIFFERENCES = [
  "under −50 %",
  "−50 to −25 %",
  "−25 to −10 %",
  "−10 to +10 %",
  "+10 to +25 %",
  "+25 to +50 %",
  "+50 % and over",
];

const signed = (value: number) => `${value < 0 ? "−" : "+"}${Math.abs(value).toFixed(1)}`;

/** What is drawn: the cans and the ground between them, the fitted bed, or what the cans differ from it. */
export function mapView(
  field: CanField,
  mean: number,
  { width, length }: { width?: number | undefined; length?: number | undefined },
  shown?: FittedView,
): MapView {
  const rates = ratesRead(field);
  if (!shown || width === undefined || length === undefined) {
    const said = "mm/h at each can";
    return { bands: canBands(field, mean), cans: field, number: figure, said, rates, of: "cans" };
  }
  const ofCans = meanOf(rates, 2);
  const { values, columns, rows, atCans } = shown.fitted;
  if (shown.what === "fitted") {
    const fitted = values.map((value) => value * ofCans);
    const x = (column: number) => ((column + 0.5) * width) / columns;
    const y = (row: number) => ((row + 0.5) * length) / rows;
    return {
      bands: classBands({ values: fitted, columns, rows, x, y }, mean),
      ground: [{ x: 0, y: 0, width, length }],
      cans: field,
      number: figure,
      said: "as fitted; mm/h caught at each can",
      ...{ rates: fitted, of: "cells" },
    };
  }
  const moved: CanField = {
    ...field,
    rates: field.rates.map((line, row) =>
      line.map((rate, column) => {
        const fit = atCans[row]?.[column] ?? null;
        return rate === null || fit === null ? null : Math.max(0, mean + rate - fit * ofCans);
      }),
    ),
  };
  return {
    bands: canBands(moved, mean),
    cans: moved,
    number: (rate) => signed(rate - mean),
    said: "measured minus fitted, mm/h at each can",
    ...{ rates: ratesRead(moved), of: "cans" },
    classes: { heading: "Difference, in % of the mean", ranges: DIFFERENCES },
  };
}
