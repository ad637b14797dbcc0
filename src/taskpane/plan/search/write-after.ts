import { DRY_SPOTS } from "../../../core/layout/judgement";
import { type LayoutBasis, layoutMultiplier } from "../../../core/layout/multiplier";
import type { Candidate } from "../../../core/layout/search/search";
import type { Host } from "../../../hosts/host";
import type { Act } from "../../workbook/act";
import { readNamed } from "../../workbook/named";
import { writeAll } from "../../workbook/writes";

const NAMES = ["After_SC", "After_MAR", "After_In_Bed_Share", "After_Capital"] as const;

/** Writes a layout into the workbook's cells for what comes after the upgrade. */
export async function writeAfter(host: Host, candidate: Candidate, basis: LayoutBasis): Promise<Act> {
  const { judgement, capital } = candidate;
  const coefficient = layoutMultiplier(judgement, basis);
  if (coefficient === DRY_SPOTS) throw new Error("This layout leaves dry spots: there is no SC to write");
  const found = await readNamed(host, NAMES);
  const missing = NAMES.filter((name) => !found[name]);
  if (missing.length > 0) {
    throw new Error(`This workbook has no cells named ${missing.join(", ")}: add the audit sheets first`);
  }
  const values = [coefficient, judgement.meanRate, judgement.inBedShare, capital];
  const writes = NAMES.map((name, index) => ({ area: found[name]!.cell, inputs: [[values[index]!]] }));
  return writeAll(host, writes, "layout");
}
