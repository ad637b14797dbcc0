import { InputError } from "../../../core/errors";
import { MEASURES } from "../../../core/figures/measures";
import { canIndices } from "../../../core/layout/cans/indices";
import { readAt } from "../../../core/layout/cans/read-at";
import { DRY_SPOTS } from "../../../core/layout/judgement";
import { type CanField, ratesRead } from "../../../core/pattern/can-field";
import { figure } from "../../parts/figure";
import type { Planned } from "../worker/messages";

/** Figures at the places of the cans, so that computed layouts and the measured bed are read alike. */
export const CAN_ROWS: readonly string[] = [
  ...[MEASURES.MAR, MEASURES.CU, MEASURES.DU].map(({ short, unit }) => `${short} at the cans [${unit}]`),
  "SC at the cans, driest",
];

function cellsOf(rates: Float64Array): Record<string, string> {
  const { meanRate, christiansen, distribution, driestCoefficient: driest } = canIndices(rates);
  const cells = [
    figure(meanRate),
    figure(christiansen),
    figure(distribution),
    driest === DRY_SPOTS ? driest : figure(driest),
  ];
  return Object.fromEntries(CAN_ROWS.map((row, index) => [row, cells[index]!]));
}

/** What the cans of the measured bed read. */
export function measuredCells(field: CanField): Record<string, string> {
  return cellsOf(Float64Array.from(ratesRead(field)));
}

/** What the cans that were read would read under a layout; in words where they don't fit its bed. */
export function layoutAtCans({ coverage }: Planned, field: CanField): Record<string, string> {
  const places = field.along.flatMap((y, row) =>
    field.across.flatMap((x, column) => (field.rates[row]![column] === null ? [] : [{ x, y }])),
  );
  try {
    return cellsOf(readAt(coverage, places));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { [CAN_ROWS[0]!]: error.missing ? "dry" : "cans off this bed" };
  }
}
