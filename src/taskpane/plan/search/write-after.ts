import { MEASURES } from "../../../core/figures/measures";
import { DRY_SPOTS } from "../../../core/layout/judgement";
import { type LayoutBasis, layoutMultiplier } from "../../../core/layout/multiplier";
import type { Candidate } from "../../../core/layout/search/search";
import type { Host } from "../../../hosts/host";
import type { Question } from "../../parts/task/question";
import type { Act } from "../../workbook/act";
import { readNamed, textIn } from "../../workbook/named";
import { writeAll } from "../../workbook/writes";
import { basisOfAudit } from "./audit-basis";

const NAMES = ["After_SC", "After_MAR", "After_In_Bed_Share", "After_Capital"] as const;
const KIND: Readonly<Record<LayoutBasis, string>> = { driest: "SC (driest cell)", quarter: MEASURES.SC_QUARTER.name };

/**
 * Writes a layout into the workbook's cells for what comes after the upgrade: its SC of the kind that sets the run time
 * of the audit, or of another one once that was asked about.
 */
export async function writeAfter(
  host: Host,
  { judgement, capital }: Candidate,
  searched: LayoutBasis,
  keep: (act: Act) => void,
): Promise<string | Question> {
  const found = await readNamed(host, [...NAMES, "Multiplier_Basis"]);
  const missing = NAMES.filter((name) => !found[name]);
  if (missing.length > 0) {
    throw new Error(`This workbook has no cells named ${missing.join(", ")}: add the audit sheets first`);
  }
  const own = basisOfAudit(found);
  const write = async (basis: LayoutBasis): Promise<string> => {
    const coefficient = layoutMultiplier(judgement, basis);
    if (coefficient === DRY_SPOTS) throw new Error(`This layout leaves dry spots: there is no ${KIND[basis]} to write`);
    const values = [coefficient, judgement.meanRate, judgement.inBedShare, capital];
    const writes = NAMES.map((name, index) => ({ area: found[name]!.cell, inputs: [[values[index]!]] }));
    keep(await writeAll(host, writes, "layout"));
    return `Written as after the upgrade, on the sheet Water and cost, with its ${KIND[basis]}`;
  };
  if (own) return write(own);
  const based = textIn(found.Multiplier_Basis);
  return {
    text: `The run time of this audit is based on ${based ? `a ${based}` : "nothing yet"}, and a layout has no SC of that kind. Write its ${KIND[searched]}? Before and after are then of two kinds.`,
    yes: `Write the ${KIND[searched]}`,
    no: "Leave it",
    doing: "Writing",
    act: () => write(searched),
  };
}
