const over = (t: string, summed: string) => `SUMIF(Work_Reading,">"&${t},${summed})`;
const byArea = (t: string) => `(${over(t, "Work_Area_Reading")}-${t}*${over(t, "Work_Area")})/Weighed_Area_m2`;
const equal = (t: string) => `(${over(t, "Work_Reading")}-${t}*COUNTIF(Work_Reading,">"&${t}))/Cans_Counted`;

/** The part of the water that lies above a reading [mL], in a cell. */
export const drainedAbove = (t: string) => `IF(By_Area,${byArea(t)},${equal(t)})/Used_Reading`;

/** Share of the water that drains from the pots at the run time wanted; needs a number in Just_Enough_mL. */
export const DRAINED_NOW = `MAX(0,${drainedAbove("Just_Enough_mL")})`;

/** The reading now of a can that gets just enough after the change, at a multiplier; "" where there is no shape to keep. */
export const justEnoughAfter = (multiplier: string) =>
  `IF(AND(ISNUMBER(Used_Reading),ISNUMBER(Spread_After)),IF(Spread_After>0,Used_Reading*(1+(1/${multiplier}-1)/Spread_After),""),"")`;

/** What drains after a change, the pattern keeping its shape; to the driest can where there is no shape to keep. */
export const drainedAfterAt = (multiplier: string, justEnough: string) =>
  `IF(ISNUMBER(${justEnough}),MAX(0,Spread_After*${drainedAbove(justEnough)}),MAX(0,1-1/${multiplier}))`;

export const DRAINED_AFTER = drainedAfterAt("Valve_Multiplier_After", "Just_Enough_After_mL");
