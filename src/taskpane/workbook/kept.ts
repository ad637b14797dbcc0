import type { Cell, Input } from "../../cells/cell";
import type { Host } from "../../hosts/host";
import type { Snapshot } from "../../hosts/snapshot";

/** The stamp of the inputs as they are now. */
export const INPUTS_STAMP = "Inputs_Stamp";

/** What the inputs are stamped with; "" where the workbook has none, or is still calculating. */
export function stampIn(snapshot: Snapshot): string {
  if (snapshot.seen.calculating) return "";
  const cell: Cell = snapshot.named(INPUTS_STAMP)?.cells[0]?.[0] ?? null;
  return typeof cell === "string" ? cell : "";
}

/** Keeps values in named cells of the workbook, where it has them and the snapshot shows other ones; one write. */
export async function keepInWorkbook(
  host: Host,
  snapshot: Snapshot,
  values: Readonly<Record<string, string | number>>,
): Promise<void> {
  const asTyped = (value: string | number): Input => (typeof value === "string" && value !== "" ? `'${value}` : value);
  const writes = Object.entries(values).flatMap(([name, value]) => {
    const filled = snapshot.named(name);
    if (!filled || (filled.cells[0]![0] ?? "") === value) return [];
    const [first] = filled.area.address.split(":");
    return [{ area: { ...filled.area, address: first! }, inputs: [[asTyped(value)]] }];
  });
  if (writes.length > 0) await host.writeKept(writes);
}
