import { caughtDepth } from "../../core/application/depth";
import { caughtRate } from "../../core/application/rate";
import { mean } from "../../core/readings";
import { christiansen } from "../../core/uniformity/christiansen";
import { distributionUniformity, QUARTER_NEEDS } from "../../core/uniformity/distribution";
import { schedulingCoefficient, shareSchedulingCoefficient } from "../../core/uniformity/scheduling-coefficient";
import {
  weightedChristiansen,
  weightedDistribution,
  weightedMean,
  weightedSchedulingCoefficient,
  weightedShareSchedulingCoefficient,
} from "../../core/uniformity/weighted";
import { type AuditInputs, ifAll } from "./audit-inputs";
import type { BedCans } from "./bed-cans";

/** The measures of a test; null where the readings cannot give one. */
export interface Measures {
  mar: number | null;
  cu: number | null;
  du: number | null;
  scCan: number | null;
  scQuarter: number | null;
  scShare: number | null;
}

/** The measures with equal weight, by area, and those that count. */
export interface TestMeasures {
  equal: Measures;
  weighted: Measures;
  /** Whether those by area count: as soon as places and bed are known. */
  byArea: boolean;
  used: Measures;
}

/** Under it a quarter counts as dry. */
const LEAST_DU = 1e-7;
const NONE: Measures = { mar: null, cu: null, du: null, scCan: null, scQuarter: null, scShare: null };

const inverse = (du: number | null) => (du !== null && du > LEAST_DU ? 100 / du : null);

function rateOfOne(inputs: AuditInputs): number | null {
  return ifAll([inputs.number("Test_Minutes"), inputs.number("Can_Mouth_mm")], (minutes, mouth) =>
    minutes > 0 && mouth > 0 ? caughtRate(caughtDepth(1, mouth), minutes) : null,
  );
}

function equalMeasures({ catches, dry }: BedCans, rate: number | null, share: number | null): Measures {
  if (catches.length === 0) return NONE;
  const du = catches.length >= QUARTER_NEEDS ? distributionUniformity(catches) : null;
  return {
    mar: rate === null ? null : mean(catches, 2) * rate,
    cu: christiansen(catches),
    du,
    scCan: dry > 0 ? null : schedulingCoefficient(catches),
    scQuarter: inverse(du),
    scShare: ofShare(share, (part) => shareSchedulingCoefficient(catches, part)),
  };
}

/** Null where so many cans are dry that no multiple of the mean reaches the share. */
function ofShare(share: number | null, coefficient: (share: number) => number): number | null {
  if (share === null || !(share >= 0.5 && share <= 1)) return null;
  return ifAll([share], coefficient);
}

function weightedMeasures({ catches, areas, dry }: BedCans, rate: number | null, share: number | null): Measures {
  if (areas.length === 0 || catches.length === 0) return NONE;
  const average = weightedMean(catches, areas);
  const du = catches.length >= QUARTER_NEEDS ? weightedDistribution(catches, areas) : null;
  return {
    mar: rate === null ? null : average * rate,
    cu: weightedChristiansen(catches, areas),
    du,
    scCan: dry > 0 ? null : weightedSchedulingCoefficient(catches, areas),
    scQuarter: inverse(du),
    scShare: ofShare(share, (part) => weightedShareSchedulingCoefficient(catches, areas, part)),
  };
}

/** The measures of a test, from its readings. */
export function testMeasures(inputs: AuditInputs, cans: BedCans): TestMeasures {
  const rate = rateOfOne(inputs);
  const share = inputs.number("Share_Wanted");
  const equal = equalMeasures(cans, rate, share);
  const weighted = weightedMeasures(cans, rate, share);
  const byArea = cans.areas.length > 0;
  return { equal, weighted, byArea, used: byArea ? weighted : equal };
}
