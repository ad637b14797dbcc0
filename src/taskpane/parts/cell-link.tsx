import type { Area } from "../../cells/area";
import { reference } from "../../cells/box";
import type { Host } from "../../hosts/host";

/** The address of a cell that goes there. */
export function CellLink({ host, cell, words }: { host: Host; cell: Area; words?: string }) {
  return (
    <button type="button" className="link" onClick={() => host.select(cell, true)}>
      {words ?? reference(cell)}
    </button>
  );
}
