import type { Area } from "../../cells/area";
import { cellAt } from "../../cells/box";
import type { Host } from "../../hosts/host";
import { cellText } from "../workbook/named";

/** A data check of the workbook that says something. */
export interface SpeakingCheck {
  label: string;
  words: string;
  /** Where it is. */
  cell: Area;
}

const CHECKS = ["Can_Checks", "Head_Checks"];

/** The data checks that are neither blank nor "ok", sheet after sheet; label and words are side by side. */
export async function readChecks(host: Host): Promise<SpeakingCheck[]> {
  const speaking: SpeakingCheck[] = [];
  for (const name of CHECKS) {
    const area = await host.named(name);
    if (!area) continue;
    (await host.read(area)).forEach(([label, words], row) => {
      const check = { label: cellText(label), words: cellText(words), cell: cellAt(area, row, 1) };
      if (check.label !== "" && check.words !== "" && check.words !== "ok") speaking.push(check);
    });
  }
  return speaking;
}
