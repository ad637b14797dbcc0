import type { CanField } from "../../core/pattern/can-field";
import type { Host } from "../../hosts/host";
import type { Snapshot } from "../../hosts/snapshot";
import { AUDIT_NAMES, auditSource } from "../map/find-source";
import type { Reading } from "../workbook/reading";
import { useWatched } from "../workbook/use-watched";

function fieldIn(snapshot: Snapshot): CanField | null {
  try {
    return auditSource(snapshot).field;
  } catch {
    return null;
  }
}

const MEASURED: Reading<CanField | null> = { wants: { names: AUDIT_NAMES }, read: fieldIn };

/** The cans of the workbook's audit, or null while there are none that can be read. */
export const useMeasured = (host: Host): CanField | null => useWatched(host, MEASURED).found;
