import type { Stated } from "../../cells/stated";
import { InputError } from "../../core/errors";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { AuditInputs } from "./audit-inputs";
import { bedCans } from "./bed-cans";
import { cellsOfFile } from "./cells-of-file";
import { costFigures } from "./cost-figures";
import { type KeptEnds, keptEnds } from "./kept-ends";
import { limitFigures, limitsInUse } from "./limits-in-use";
import { potFigures } from "./pot-figures";
import { runTimeFigures } from "./run-time-figures";
import { type Measures, testMeasures } from "./uniformity-figures";
import { verdictFigures } from "./verdict-figures";
import { waterFigures } from "./water-figures";

const named = (prefix: string, { mar, cu, du, scCan, scQuarter, scShare }: Measures): [string, Stated][] => [
  [`${prefix}_MAR`, mar],
  [`${prefix}_CU`, cu],
  [`${prefix}_DU_Quarter`, du],
  [`${prefix}_SC_Can`, scCan],
  [`${prefix}_SC_Quarter`, scQuarter],
  [`${prefix}_SC_Share`, scShare],
];

/** What came of recomputing an audit. */
export interface Recomputed {
  /** By the names of the cells; null where the inputs cannot give a figure. */
  figures: Map<string, Stated>;
  /** Why nothing could be recomputed, in words; "" where it could. */
  problem: string;
}

/** Every figure of an audit by our own computation from what was typed; no formula of the file takes part. */
export function auditFigures(book: FileBook): Recomputed {
  try {
    return { figures: figuresOf(new AuditInputs(book), keptEnds(cellsOfFile(book))), problem: "" };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { figures: new Map(), problem: error.message };
  }
}

function figuresOf(inputs: AuditInputs, kept: KeptEnds): Map<string, Stated> {
  const cans = bedCans(inputs);
  const limits = limitsInUse(inputs);
  const { equal, weighted, byArea, used } = testMeasures(inputs, cans);
  const run = runTimeFigures(inputs, used, cans);
  const water = waterFigures(inputs, used, run);
  const cost = costFigures(inputs, run, water, cans);
  return new Map<string, Stated>([
    ["Block_Area_m2", water.area],
    ["Cans_Counted", cans.count],
    ["Cans_Dry", cans.count > 0 ? cans.dry : null],
    ["Used_MAR", used.mar],
    ["Used_CU", used.cu],
    ["Used_DU", used.du],
    ["Used_SC_Can", used.scCan],
    ["Used_SC_Quarter", used.scQuarter],
    ["Used_SC_Share", used.scShare],
    ...named("Result", equal),
    ...named("Weighted", weighted),
    ["By_Area", byArea],
    ...limitFigures(limits),
    ...verdictFigures(limits, used, cans, kept),
    ["Net_Depth_mm", run.netDepth],
    ["Run_Multiplier", run.multiplier],
    ["Gross_Multiplier", run.grossMultiplier],
    ["Valve_Multiplier", run.valveMultiplier],
    ["Valve_Run_min", run.valveMinutes],
    ["Valve_Run_After_min", water.minutesAfter],
    ["Valve_Multiplier_After", water.multiplierAfter],
    ["Mean_Drained_Share", run.drained],
    ["Result_Run_Time_min", run.minutes],
    ["Pulse_Count", run.pulses],
    ...potFigures(inputs, run.groups, { ...run, mar: used.mar, bedWater: water.onBed.Now }, run.groupWater),
    ["Result_Water_kL", water.water],
    ["Result_Cost", cost.get("Cost_Water_Now_Likely")!],
    ["Result_Power", cost.get("Cost_Power_Now_Likely")!],
    ["Used_Now_kL", water.usedNow],
    ["Needed_After_kL", water.neededAfter],
    ["Saved_kL", water.saved],
    ...cost,
  ]);
}
