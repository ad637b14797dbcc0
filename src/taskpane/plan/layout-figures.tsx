import { withUnit } from "../../core/figures/figure";
import { LAYOUT } from "../../core/figures/layout";
import { bedRunTime } from "../../core/layout/bed-run-time";
import { DRY_SPOTS } from "../../core/layout/judgement";
import { pumpShare } from "../../core/layout/search/pump-share";
import { figure } from "../parts/figure";
import type { Planned } from "./worker/messages";
import { PATCH_SHARE } from "./worker/service";

/** What is wanted of a layout besides evenness; undefined where it was left blank. */
export interface Needs {
  /** Net depth [mm]. */
  depth?: number | undefined;
  /** Flow of the pump [L/h]. */
  pump?: number | undefined;
}

/** A column of the table: a layout, or the measured bed with what cans can tell. */
export interface Column {
  name: string;
  cells: Readonly<Record<string, string>>;
}

/** The rows of the table, in order; the cell is named since SC of the driest one depends on it. */
export const ROWS = [
  LAYOUT.HEADS,
  LAYOUT.FLOW,
  LAYOUT.PUMP,
  LAYOUT.MAR,
  LAYOUT.CU,
  LAYOUT.DU,
  LAYOUT.SC_CELL,
  LAYOUT.SC_QUARTER,
  { ...LAYOUT.SC_PATCH, name: `${LAYOUT.SC_PATCH.name} (${100 * PATCH_SHARE} % of the bed)` },
  LAYOUT.IN_BED,
  LAYOUT.WATER_CELL,
  LAYOUT.WATER_QUARTER,
  LAYOUT.TIME_CELL,
  LAYOUT.TIME_QUARTER,
].map(withUnit);

const words = (value: number | typeof DRY_SPOTS): string => (value === DRY_SPOTS ? value : figure(value));

/** What is known of a layout, row by row. */
export function layoutCells({ judgement, patch }: Planned, { depth, pump }: Needs): Record<string, string> {
  const share = pump === undefined ? "" : pumpShare(judgement.flow, pump);
  const load = share === "" ? "" : `${figure(100 * share)} %${share > 1 ? ": too much" : ""}`;
  const time = (basis: "driest" | "quarter") => (depth === undefined ? "" : words(bedRunTime(judgement, depth, basis)));
  const cells = [
    String(judgement.heads),
    String(Math.round(judgement.flow)),
    load,
    figure(judgement.meanRate),
    figure(judgement.christiansen),
    figure(judgement.distribution),
    words(judgement.driestCoefficient),
    words(judgement.quarterCoefficient),
    patch === null ? "too many cells" : words(patch),
    figure(100 * judgement.inBedShare),
    words(judgement.driestWater),
    words(judgement.quarterWater),
    time("driest"),
    time("quarter"),
  ];
  return Object.fromEntries(ROWS.map((row, index) => [row, cells[index]!]));
}

/** Layouts side by side. */
export function FigureTable({
  columns,
  rows,
  caption,
}: {
  columns: readonly Column[];
  rows: readonly string[];
  caption: string;
}) {
  const shown = rows.filter((row) => columns.some(({ cells }) => cells[row]));
  return (
    <section
      className="wide"
      aria-label={columns.length > 1 ? "Layouts compared" : "Figures of the layout"}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keyboard
      tabIndex={0}
    >
      <table className="figures">
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Measure</th>
            {columns.map(({ name }) => (
              <th key={name} scope="col" className="right">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {shown.map((row) => (
            <tr key={row}>
              <th scope="row">{row}</th>
              {columns.map(({ name, cells }) => (
                <td key={name} className="right">
                  {cells[row] || "–"}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
