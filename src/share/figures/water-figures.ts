import { runTime } from "../../core/application/run-time";
import { annualWater } from "../../core/cost/water";
import { type AuditInputs, ifAll } from "./audit-inputs";
import { bedFlow } from "./bed-flow";
import { leached, type RunTimeFigures, times, valveFactor } from "./run-time-figures";
import type { Measures } from "./uniformity-figures";

/** Water of a year, of all beds on the valve; null where something is missing. */
export interface WaterFigures {
  area: number | null;
  /** Needed now. */
  water: number | null;
  /** Falling on the bed alone, now and after. */
  onBed: { Now: number | null; After: number | null };
  /** With leaching, at the run of the valve. */
  multiplierAfter: number | null;
  /** Run of the valve after. */
  minutesAfter: number | null;
  usedNow: number | null;
  neededAfter: number | null;
  saved: number | null;
}

const LITRES_A_KILOLITRE = 1000;
const asShare = (value: number | null) => (value !== null && value > 0 && value <= 1 ? value : null);

/** How many beds the water is counted for. */
const bedsOf = (inputs: AuditInputs) => Math.max(1, inputs.number("Beds_On_Valve") ?? 1);

function usedNow(inputs: AuditInputs, share: number | null, used: Measures, area: number | null): number | null {
  const beds = bedsOf(inputs);
  const hours = ifAll(
    [inputs.number("Run_Minutes_Now"), inputs.number("Runs_A_Year_Now")],
    (run, runs) => (run / 60) * runs,
  );
  const fromHeads =
    inputs.number("Metered_kL") ??
    ifAll([bedFlow(inputs), hours], (flow, time) => (flow * beds * time) / LITRES_A_KILOLITRE);
  if (share !== null && fromHeads !== null) return fromHeads;
  return ifAll(
    [used.mar, hours, area],
    (rate, time, size) => (rate * time * size * beds) / LITRES_A_KILOLITRE / (share ?? 1),
  );
}

/** The water of an audit from what was typed, its measures and its run time. */
export function waterFigures(inputs: AuditInputs, used: Measures, run: RunTimeFigures): WaterFigures {
  const area = ifAll([inputs.number("Bed_Width_m"), inputs.number("Bed_Length_m")], (width, length) => width * length);
  const share = asShare(inputs.number("In_Bed_Share"));
  const days = inputs.number("Water_Days");
  const yearly = (multiplier: number | null, inBed: number | null) =>
    ifAll([area, run.netDepth, days, multiplier], (size, depth, count, multiplied) =>
      count > 0 ? annualWater(size * bedsOf(inputs), depth, count, multiplied, inBed ?? 1) : null,
    );
  const water = yearly(run.valveMultiplier, share);
  const after = inputs.number("After_SC");
  const grossAfter = after !== null && after >= 1 ? leached(inputs, after) : null;
  const bedMinutesAfter = ifAll([run.netDepth, inputs.number("After_MAR"), grossAfter], (depth, mar, multiplied) =>
    mar > 0 ? runTime(depth, mar, multiplied) : null,
  );
  const factorAfter = valveFactor(
    inputs.number("Other_Beds_Run_After_min") ?? inputs.number("Other_Beds_Run_min"),
    bedMinutesAfter,
  );
  const multiplierAfter = times(grossAfter, factorAfter);
  const neededAfter = yearly(
    multiplierAfter,
    share === null ? null : (asShare(inputs.number("After_In_Bed_Share")) ?? share),
  );
  const watersToDriest = inputs.text("Waters_To_Driest") === "yes";
  return {
    area,
    water,
    onBed: { Now: yearly(run.valveMultiplier, null), After: yearly(multiplierAfter, null) },
    multiplierAfter,
    minutesAfter: times(bedMinutesAfter, factorAfter),
    usedNow: usedNow(inputs, share, used, area),
    neededAfter,
    saved: watersToDriest ? ifAll([water, neededAfter], (now, later) => now - later) : null,
  };
}
