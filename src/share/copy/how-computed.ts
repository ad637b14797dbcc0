const HOW: Readonly<Record<string, string>> = {
  "SC.PATCH":
    "mean of all cans over the mean of the driest patch: of all rectangles of neighbouring cans that just cover the share given, the one with the lowest mean",
  INTERVAL:
    "bias-corrected and accelerated bootstrap interval (Efron 1987): readings sorted, 2,000 resamples from a generator with a fixed seed, ends interpolated between order statistics",
  SUMMARY:
    "the measures of this workbook, each with its 90 % bootstrap interval (Efron 1987), its limit and where the interval lies against it",
  "LAYOUT.COVERAGE":
    "sum of the application rates of all heads at the middle of each cell of a square grid over the bed, from the profile of one head",
  "LAYOUT.COMPARE":
    "the overlap of all heads over the bed for each way of placing them, each judged by its mean rate and evenness",
  "ETO.PENMAN": "FAO-56 Penman-Monteith reference evapotranspiration (Allen and others 1998, eq. 6)",
};

/** How the add-in's functions in a formula were computed, in words, for those whose value stands in place of a formula. */
export function howComputed(names: readonly string[]): string {
  return [...new Set(names)]
    .map((name) => `${name}: ${HOW[name] ?? "computed by the add-in with the inputs of the old formula"}`)
    .join("; ");
}
