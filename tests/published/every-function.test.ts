import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { namesIn } from "../support/calls";
import { caseFiles } from "../support/case-files";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const FAMILIES = ["register", "uniformity", "application", "cost", "program", "summary", "layout", "demand", "bed"];

/** Functions that no printed value checks directly, by the file that holds a property or a reference for each. */
const ELSEWHERE: Record<string, string[]> = {
  "tests/core/annuity.test.ts": ["annuity"],
  "tests/core/application/controller-setting.test.ts": ["controllerSetting"],
  "tests/core/application/leaching.test.ts": ["correctedRunTime", "potWater"],
  "tests/core/application/pot-groups.test.ts": ["potGroups", "reachedShare"],
  "tests/core/application/pulses.test.ts": ["pulses"],
  "tests/core/cost/tariffs.test.ts": ["blockTariffCost", "hourlyPowerCost"],
  "tests/core/cost/upgrade.test.ts": ["netPresentValue", "payingWaterPrice", "simplePayback", "upgradeCost"],
  "tests/core/cost/yearly-cost.test.ts": ["drainedFertiliserCost", "yearlyCost"],
  "tests/core/bed/causes.test.ts": ["causes", "nextCheck", "whereOf"],
  "tests/core/bed/evidence.test.ts": ["Evidence", "meanTaken", "measuredWords", "nozzle", "taken"],
  "tests/core/bed/slow.test.ts": ["bedsDrawn", "nextCans", "redrawn", "wholeBedOf"],
  "tests/core/bed/head-lines.test.ts": ["headsOfLines"],
  "tests/core/bed/parts.test.ts": ["cholesky", "lowerSolved", "nonNegative", "overlapColumns", "shapeOf"],
  "tests/core/bed/read-bed.test.ts": ["bedHeads", "readBed"],
  "tests/core/bed/whole-bed.test.ts": ["cellIndices", "parseWholeBedIndex", "systematicShares", "wholeBed"],
  "tests/core/drained-share.test.ts": ["drainedShareAfter"],
  "tests/core/generator.test.ts": ["Generator"],
  "tests/core/layout/bed-figures.test.ts": [
    "bedRunTime",
    "driestPatchCoefficient",
    "layoutMultiplier",
    "parseLayoutBasis",
    "pumpShare",
    "upgradeCapital",
    "waterFactor",
  ],
  "tests/core/layout/can-plan-error.test.ts": ["canIndices", "canPlanError", "rateAt", "readAt"],
  "tests/core/layout/can-plan.test.ts": ["canPlaces", "canPlan", "meetsHeads"],
  "tests/core/layout/heads.test.ts": [
    "caution",
    "cellsOfBed",
    "coverage",
    "gapCount",
    "headCounts",
    "headTotal",
    "heads",
    "parseArcs",
    "parseArrangement",
  ],
  "tests/core/layout/judgement.test.ts": ["compare", "judgement"],
  "tests/core/layout/overlap.test.ts": ["overlap"],
  "tests/core/layout/profile.test.ts": ["parseShape"],
  "tests/core/layout/published.test.ts": ["flowAtPressure", "measuredProfile", "namedProfile"],
  "tests/core/layout/search.test.ts": ["finalistPatches", "ranking", "search"],
  "tests/core/layout/symmetric-judgement.test.ts": ["symmetricJudgement"],
  "tests/core/demand/monthly.test.ts": ["lessRain", "monthlyDemand", "potUse", "weatherUse", "weighedUse"],
  "tests/core/by-fit.test.ts": ["rowsByFit"],
  "tests/core/demand/properties.test.ts": ["radians"],
  "tests/core/limits.test.ts": ["verdict"],
  "tests/core/multiplier.test.ts": ["parseBasis"],
  "tests/core/program/exact.test.ts": ["bound", "fitNight", "taskOf"],
  "tests/core/program/fit-night.test.ts": ["flowCurve", "nightSteps"],
  "tests/core/program/parts.test.ts": [
    "Board",
    "Supply",
    "clock",
    "dualFeasible",
    "heaviestClique",
    "jobs",
    "minuteAfter",
    "openMinutes",
    "orderSearch",
    "randomBelow",
    "spans",
    "thousandths",
  ],
  "tests/core/program/remedies.test.ts": ["remedies", "twelveMonths"],
  "tests/core/program/verify-night.test.ts": ["verifyNight"],
  "tests/core/properties.test.ts": ["interval", "multiplier"],
  "tests/core/quarter-count.test.ts": ["quarterCount"],
  "tests/core/register.test.ts": [
    "basis",
    "change",
    "earlierAudit",
    "plainName",
    "pressureDrift",
    "retest",
    "retestWords",
    "sameBlock",
    "windClass",
  ],
  "tests/core/summary.test.ts": ["summary"],
  "tests/core/weighted.test.ts": [
    "weightedChristiansen",
    "weightedDistribution",
    "weightedLowQuarter",
    "weightedMean",
    "weightedQuarterSchedulingCoefficient",
    "weightedSchedulingCoefficient",
    "weightedShareSchedulingCoefficient",
  ],
  "tests/published/whole-bed-numpy.test.ts": [
    "Normals",
    "SmoothField",
    "alikeness",
    "bedPlaces",
    "cholesky",
    "conditionalDraw",
    "covariances",
    "errorsOf",
    "floored",
    "headColumns",
    "logLikelihood",
    "solved",
  ],
  "tests/published/scipy-bootstrap.test.ts": [
    "bcaEnds",
    "bootstrap",
    "countedChristiansen",
    "countedDistribution",
    "countedMean",
  ],
};
/** Parts of another function, and the one that they are checked through. */
const WITHIN: Record<string, string> = {
  facingBed: "bedHeads",
  headName: "nextCheck",
  lightWindPenalty: "causes",
  lightWinds: "causes",
  lineOfHead: "headsOfLines",
  moreWeakHeads: "causes",
  oddCan: "causes",
  otherArcs: "causes",
  outside: "causes",
  addHat: "headColumns",
  areaDistribution: "weightedDistribution",
  brokenLimits: "search",
  canArea: "weightedMean",
  cansByArea: "weightedMean",
  checkArcs: "coverage",
  checkOf: "nextCheck",
  checkSearch: "search",
  checkWet: "judgement",
  checkedCells: "coverage",
  reachesBorder: "coverage",
  countedByArea: "interval",
  covariance: "causes",
  dayOf: "declination",
  directionName: "whereOf",
  dot: "nonNegative",
  drawnBeds: "wholeBed",
  elevationOf: "airPressure",
  fallingPressure: "causes",
  fittedModels: "wholeBed",
  fittedAt: "causes",
  gramOf: "causes",
  groundOf: "causes",
  hatFactors: "headColumns",
  headsInReach: "whereOf",
  hollowness: "causes",
  humidities: "actualPressure",
  judged: "judgement",
  lowest: "canIndices",
  latitudeOf: "sunsetAngle",
  lowPressure: "causes",
  mapCause: "causes",
  originOf: "overlapColumns",
  placeName: "whereOf",
  plain: "causes",
  readingVariances: "causes",
  secondFault: "causes",
  Setting: "causes",
  shapeAt: "overlapColumns",
  strongHead: "causes",
  strongWind: "causes",
  stuckHead: "causes",
  weakHead: "causes",
  lowestCounted: "weightedLowQuarter",
  misfit: "logLikelihood",
  overDriest: "judgement",
  stamp: "overlap",
  temperatureOf: "saturationPressure",
  temperatures: "meanSaturationPressure",
  valueAt: "headColumns",
  windOf: "windAtTwoMetres",
};

const named = new Set(caseFiles().flatMap(({ cases }) => cases.flatMap(namesIn)));

const exported = (
  await Promise.all(
    FAMILIES.flatMap((family) =>
      readdirSync(`${ROOT}/src/core/${family}`, { recursive: true, encoding: "utf8" })
        .filter((file) => file.endsWith(".ts"))
        .map(async (file) => (await import(`${ROOT}/src/core/${family}/${file}`)) as Record<string, unknown>),
    ),
  )
).flatMap((module) => Object.keys(module).filter((name) => typeof module[name] === "function"));

const elsewhere = Object.entries(ELSEWHERE).flatMap(([file, names]) => names.map((name) => ({ name, file })));

describe("every function of core", () => {
  it.each(exported)("%s has a value from outside or a property", (name) => {
    const whole = WITHIN[name] ?? name;
    expect(named.has(whole) || elsewhere.some((listed) => listed.name === whole)).toBe(true);
  });
});

describe("the list of properties", () => {
  it.each(elsewhere)("has $name in $file", ({ name, file }) => {
    expect(exported).toContain(name);
    expect(readFileSync(`${ROOT}/${file}`, "utf8")).toMatch(new RegExp(`\\b${name}\\b`));
  });

  it("has no part of a function that is not there", () => {
    expect(exported).toEqual(expect.arrayContaining(Object.keys(WITHIN)));
  });
});
