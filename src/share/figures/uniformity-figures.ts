import { caughtDepth } from "../../core/application/depth";
import { caughtRate } from "../../core/application/rate";
import { mean } from "../../core/readings";
import { christiansen } from "../../core/uniformity/christiansen";
import { distributionUniformity, QUARTER_NEEDS } from "../../core/uniformity/distribution";
import { schedulingCoefficient, shareSchedulingCoefficient } from "../../core/uniformity/scheduling-coefficient";
import { weightedChristiansen, weightedLowQuarter, weightedMean } from "../../core/uniformity/weighted";
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

/** The measures each can alike, by area, and as the results put first. */
export interface TestMeasures {
  plain: Measures;
  weighted: Measures;
  uneven: boolean;
  used: Measures;
}

const EVEN_UP_TO = 1.05;
/** Under it a quarter counts as dry. */
const LEAST_DU = 1e-7;
const NONE: Measures = { mar: null, cu: null, du: null, scCan: null, scQuarter: null, scShare: null };

const inverse = (du: number | null) => (du !== null && du > LEAST_DU ? 100 / du : null);

function rateOfOne(inputs: AuditInputs): number | null {
  return ifAll([inputs.number("Test_Minutes"), inputs.number("Can_Mouth_mm")], (minutes, mouth) =>
    minutes > 0 && mouth > 0 ? caughtRate(caughtDepth(1, mouth), minutes) : null,
  );
}

function plainMeasures({ catches, dry }: BedCans, rate: number | null, share: number | null): Measures {
  if (catches.length === 0) return NONE;
  const du = catches.length >= QUARTER_NEEDS ? distributionUniformity(catches) : null;
  return {
    mar: rate === null ? null : mean(catches, 2) * rate,
    cu: christiansen(catches),
    du,
    scCan: dry > 0 ? null : schedulingCoefficient(catches),
    scQuarter: inverse(du),
    scShare: share !== null && share >= 0.5 && share <= 1 ? ofShare(catches, share) : null,
  };
}

/** Null where so many cans are dry that no multiple of the mean reaches the share. */
function ofShare(catches: number[], share: number): number | null {
  const wet = catches.filter((caught) => caught > 0).length;
  return wet >= Math.ceil(share * catches.length - 1e-9) ? shareSchedulingCoefficient(catches, share) : null;
}

function weightedMeasures({ catches, areas, dry }: BedCans, rate: number | null): Measures {
  if (areas.length === 0 || catches.length === 0) return NONE;
  const average = weightedMean(catches, areas);
  const du = catches.length >= QUARTER_NEEDS ? (100 * weightedLowQuarter(catches, areas)) / average : null;
  return {
    ...NONE,
    mar: rate === null ? null : average * rate,
    cu: weightedChristiansen(catches, areas),
    du,
    scCan: dry > 0 ? null : average / Math.min(...catches),
    scQuarter: inverse(du),
  };
}

/** The measures of a test, from its readings. */
export function testMeasures(inputs: AuditInputs, cans: BedCans): TestMeasures {
  const rate = rateOfOne(inputs);
  const plain = plainMeasures(cans, rate, inputs.number("Share_Wanted"));
  const weighted = weightedMeasures(cans, rate);
  const uneven = cans.areas.length > 0 && Math.max(...cans.areas) / Math.min(...cans.areas) > EVEN_UP_TO;
  const scShare =
    uneven && plain.scShare !== null && cans.catches.length > 0
      ? (plain.scShare * weightedMean(cans.catches, cans.areas)) / mean(cans.catches, 2)
      : plain.scShare;
  return { plain, weighted, uneven, used: { ...(uneven ? weighted : plain), scShare } };
}
