import type { Host } from "../../../hosts/host";
import type { Snapshot } from "../../../hosts/snapshot";
import type { BedVerdict } from "../../../workbook/bed/bed-verdict";
import { keepInWorkbook } from "../../workbook/kept";
import type { Reading } from "../../workbook/reading";

/** The cells in which a verdict is kept. */
export const KEPT_CAUSE: Reading<Snapshot> = {
  wants: { names: ["Cause_Text", "Cause_Next", "Cause_Measured", "Cause_Head", "Cause_Stamp"] },
  read: (snapshot) => snapshot,
};

/** Keeps a verdict in the workbook, so that its sheets show it as long as the inputs are those of the stamp. */
export function keepCause(
  host: Host,
  snapshot: Snapshot,
  { sentence, next, measured, head }: BedVerdict,
  stamp: string,
): Promise<void> {
  return keepInWorkbook(host, snapshot, {
    Cause_Text: sentence,
    Cause_Next: next,
    Cause_Measured: measured,
    Cause_Head: head?.number ?? "",
    Cause_Stamp: stamp,
  });
}
