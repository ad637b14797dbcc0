import { annualWater } from "../../core/cost/water";
import { type AuditInputs, ifAll } from "./audit-inputs";
import { bedFlow } from "./bed-flow";
import { leached, type RunTimeFigures } from "./run-time-figures";
import type { Measures } from "./uniformity-figures";

/** Water of a year; null where something is missing. */
export interface WaterFigures {
  area: number | null;
  /** Needed now. */
  water: number | null;
  /** Falling on the bed alone, now and after. */
  onBed: { Now: number | null; After: number | null };
  /** With leaching. */
  multiplierAfter: number | null;
  usedNow: number | null;
  neededAfter: number | null;
  saved: number | null;
}

const LITRES_A_KILOLITRE = 1000;
const asShare = (value: number | null) => (value !== null && value > 0 && value <= 1 ? value : null);

function usedNow(inputs: AuditInputs, share: number | null, used: Measures, area: number | null): number | null {
  const hours = ifAll(
    [inputs.number("Run_Minutes_Now"), inputs.number("Runs_A_Year_Now")],
    (run, runs) => (run / 60) * runs,
  );
  const fromHeads =
    inputs.number("Metered_kL") ?? ifAll([bedFlow(inputs), hours], (flow, time) => (flow * time) / LITRES_A_KILOLITRE);
  if (share !== null) return fromHeads;
  return ifAll([used.mar, hours, area], (rate, time, size) => (rate * time * size) / LITRES_A_KILOLITRE);
}

/** The water of an audit from what was typed, its measures and its run time. */
export function waterFigures(inputs: AuditInputs, used: Measures, run: RunTimeFigures): WaterFigures {
  const area = ifAll([inputs.number("Bed_Width_m"), inputs.number("Bed_Length_m")], (width, length) => width * length);
  const share = asShare(inputs.number("In_Bed_Share"));
  const days = inputs.number("Water_Days");
  const yearly = (multiplier: number | null, inBed: number | null) =>
    ifAll([area, run.netDepth, days, multiplier], (size, depth, count, times) =>
      count > 0 ? annualWater(size, depth, count, times, inBed ?? 1) : null,
    );
  const water = yearly(run.grossMultiplier, share);
  const after = inputs.number("After_SC");
  const multiplierAfter = after !== null && after >= 1 ? leached(inputs, after) : null;
  const neededAfter = yearly(
    multiplierAfter,
    share === null ? null : (asShare(inputs.number("After_In_Bed_Share")) ?? share),
  );
  const watersToDriest = inputs.text("Waters_To_Driest") === "yes";
  return {
    area,
    water,
    onBed: { Now: yearly(run.grossMultiplier, null), After: yearly(multiplierAfter, null) },
    multiplierAfter,
    usedNow: usedNow(inputs, share, used, area),
    neededAfter,
    saved: watersToDriest ? ifAll([water, neededAfter], (now, later) => now - later) : null,
  };
}
