import { leachingMultiplier } from "../../core/application/leaching-depth";
import { pulses } from "../../core/application/pulses";
import { runTime } from "../../core/application/run-time";
import { drainedShare } from "../../core/uniformity/drained-share";
import { type AuditInputs, ifAll } from "./audit-inputs";
import type { BedCans } from "./bed-cans";
import { depthOfPot, groupsWater, neediestDepth, type TypedGroup, typedGroups } from "./pot-figures";
import type { Measures } from "./uniformity-figures";

/** What the run time rests on and what it comes to; null where something is missing. */
export interface RunTimeFigures {
  /** Groups of pots on the sheet Pots. */
  groups: readonly TypedGroup[];
  /** What they get, where there are any and it can be given. */
  groupWater: ReturnType<typeof groupsWater>;
  netDepth: number | null;
  multiplier: number | null;
  /** With leaching. */
  grossMultiplier: number | null;
  /** With leaching, at the run of the valve. */
  valveMultiplier: number | null;
  drained: number | null;
  minutes: number | null;
  /** Of the valve: the longest of its tested beds. */
  valveMinutes: number | null;
  pulses: number | null;
}

const potsDepth = (inputs: AuditInputs) =>
  depthOfPot(inputs, inputs.number("Pot_Top_mm"), inputs.number("Pot_Use_mL"), inputs.number("Capture_Factor"));

function chosenMultiplier(inputs: AuditInputs, used: Measures): number | null {
  const basis = inputs.text("Multiplier_Basis");
  if (basis === "driest can") return used.scCan;
  if (basis === "low quarter") return used.scQuarter;
  return basis === "share of pots" ? used.scShare : null;
}

/** The areas of the cans, where they count. */
export const areasIn = ({ areas }: BedCans) => (areas.length > 0 ? areas : undefined);

/** A multiplier with the leaching that the audit asks for. */
export function leached(inputs: AuditInputs, multiplier: number | null): number | null {
  const rule = inputs.text("Leaching_Rule");
  if (multiplier === null || (rule !== "larger" && rule !== "both")) return multiplier;
  return ifAll([multiplier, inputs.number("Leaching_Fraction") ?? 0], (times, fraction) =>
    leachingMultiplier(times, fraction, rule),
  );
}

/** What the valve's run is over that of this bed: 1, or more where another bed runs longer. */
export function valveFactor(longest: number | null, minutes: number | null): number | null {
  return longest === null || !(longest > 0) ? 1 : ifAll([minutes], (run) => Math.max(1, longest / run));
}

export const times = (value: number | null, factor: number | null): number | null =>
  ifAll([value, factor], (one, other) => one * other);

/** The run time of an audit, from what was typed, its measures and its cans. */
export function runTimeFigures(inputs: AuditInputs, used: Measures, cans: BedCans): RunTimeFigures {
  const typed = inputs.number("Depth_Typed_mm");
  const groups = typedGroups(inputs);
  const several = groups.length > 0;
  const oneSize = typed === null ? potsDepth(inputs) : typed > 0 ? typed : null;
  const netDepth = several ? neediestDepth(groups) : oneSize;
  const multiplier = chosenMultiplier(inputs, used);
  const grossMultiplier = leached(inputs, multiplier);
  const minutes = ifAll([netDepth, used.mar, grossMultiplier], runTime);
  const factor = valveFactor(inputs.number("Other_Beds_Run_min"), minutes);
  const valveMultiplier = times(grossMultiplier, factor);
  const valveMinutes = times(minutes, factor);
  const groupWater = several ? groupsWater(groups, valveMultiplier, cans.catches, areasIn(cans)) : null;
  const takeUp = inputs.number("Take_Up_mm");
  return {
    groups,
    groupWater,
    netDepth,
    multiplier,
    grossMultiplier,
    valveMultiplier,
    drained: several
      ? (groupWater?.drained ?? null)
      : ifAll([valveMultiplier], (k) => drainedShare(cans.catches, k, areasIn(cans))),
    minutes,
    valveMinutes,
    pulses: ifAll([valveMinutes, used.mar, takeUp], (run, rate, depth) =>
      depth > 0 ? pulses(run, rate, depth, inputs.number("Rest_min") ?? 0).number : null,
    ),
  };
}
