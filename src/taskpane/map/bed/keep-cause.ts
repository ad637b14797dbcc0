import type { Host } from "../../../hosts/host";
import type { BedVerdict } from "../../../workbook/bed/bed-verdict";
import { keepInWorkbook } from "../../workbook/kept";

/** Keeps a verdict in the workbook, so that its sheets show it as long as the inputs are those of the stamp. */
export function keepCause(host: Host, { sentence, next, measured, head }: BedVerdict, stamp: string): Promise<void> {
  return keepInWorkbook(host, {
    Cause_Text: sentence,
    Cause_Next: next,
    Cause_Measured: measured,
    Cause_Head: head?.number ?? "",
    Cause_Stamp: stamp,
  });
}
