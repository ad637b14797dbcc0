import type { Input } from "../../cells/cell";
import type { Host } from "../../hosts/host";
import type { Snapshot } from "../../hosts/snapshot";

/** Keeps values in named cells of the workbook, those that differ from what the snapshot shows, in one write. */
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
