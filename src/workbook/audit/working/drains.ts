const over = (t: string, summed: string) => `SUMIF(Work_Reading,">"&${t},${summed})`;
const byArea = (t: string) => `(${over(t, "Work_Area_Reading")}-${t}*${over(t, "Work_Area")})/Weighed_Area_m2`;
const equal = (t: string) => `(${over(t, "Work_Reading")}-${t}*COUNTIF(Work_Reading,">"&${t}))/Cans_Counted`;

/** The part of the water that lies above a reading [mL]. */
const above = (t: string) => `IF(By_Area,${byArea(t)},${equal(t)})/Used_Reading`;

/** Share of the water that drains from the pots at the run time wanted; needs a number in Just_Enough_mL. */
export const DRAINED_NOW = `MAX(0,${above("Just_Enough_mL")})`;

/** The same after a change, the pattern keeping its shape; to the driest can where there is no shape to keep. */
export const DRAINED_AFTER = `IF(ISNUMBER(Just_Enough_After_mL),MAX(0,Spread_After*${above("Just_Enough_After_mL")}),MAX(0,1-1/Valve_Multiplier_After))`;
