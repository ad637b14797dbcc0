const BY_AREA =
  "where areas a are given, each catch x counts for its area: m = sum(a x) / sum(a), the low quarter is the driest cans up to a quarter of the area, the last one in part, a share is one of the area";
const TIMES = `with the multiplier that its basis names; ${BY_AREA}`;

const HOW: Readonly<Record<string, string>> = {
  "CU.CHRISTIANSEN": `100 (1 - mean distance of the catches from their mean / their mean), Christiansen (1942); ${BY_AREA}`,
  "DU.QUARTER": `100 times the mean of the low quarter over the mean of all cans; ${BY_AREA}`,
  "SC.CAN": `mean of all cans over the lowest catch; ${BY_AREA}`,
  "SC.QUARTER": `mean of all cans over the mean of the low quarter; ${BY_AREA}`,
  "SC.SHARE": `mean of all cans over the catch that the share of them reaches; ${BY_AREA}`,
  MAR: `mean depth caught in an hour; ${BY_AREA}`,
  RUNTIME: `60 times the depth over the mean rate, ${TIMES}`,
  "WATER.ANNUAL": `area times depth times days over the share that lands on the bed, ${TIMES}`,
  "COST.ANNUAL": `area times depth times days over the share that lands on the bed, times the price, ${TIMES}`,
  "CAN.AREAS":
    "width times length of the strip of bed that is nearest to each can's column and row: half-way lines to its neighbours and the bed's edges",
  "SC.PATCH":
    "mean of all cans / mean of the driest patch, the rectangle of neighbouring cans with the lowest mean among those that just cover the share given",
  INTERVAL:
    "bias-corrected and accelerated bootstrap interval (Efron 1987): readings sorted, 2,000 resamples from a generator with a fixed seed, ends interpolated between order statistics; where areas are given, pairs of catch and area are resampled",
  SUMMARY:
    "the measures of this workbook, each with its 90 % bootstrap interval (Efron 1987), its limit and where the interval lies against it; where areas are given, each can counts for its area",
  "LAYOUT.COVERAGE":
    "sum of the application rates of all heads at the middle of each cell of a square grid over the bed, from the profile of one head",
  "LAYOUT.COMPARE":
    "the overlap of all heads over the bed for each way of placing them, each judged by its mean rate and evenness",
  "BED.CAUSES":
    "the overlap of the heads fitted to the catches under nine causes, each weighted by exp(-score/3) of its squared misfit, its throw and what its search costs; cannot tell under 60 %, under 16 cans, where the fit leaves clearly more than reading error, or where one misread can, other part circles, several weak heads, a strong head or one that does not turn fit better",
  "BED.INTERVAL":
    "240 whole beds drawn given the catches, from a generator with a fixed seed. Each is of a linear normal model of the heads' overlap (9 profiles, 10 throws, outputs and throws of the heads, drift, smooth unevenness, error of reading), drawn as often as its likelihood says. Given are median and quantiles of the index, widened by a standard deviation of 4 % of 100 less CU, 3 % of 100 less DU or 0.6 % of the mean",
  "ETO.PENMAN": "FAO-56 Penman-Monteith reference evapotranspiration (Allen and others 1998, eq. 6)",
};

/** How the add-in's functions in a formula were computed, in words, for those whose value is in place of a formula. */
export function howComputed(names: readonly string[]): string {
  return [...new Set(names)]
    .map((name) => `${name}: ${HOW[name] ?? "computed by the add-in with the inputs of the old formula"}`)
    .join("; ");
}
