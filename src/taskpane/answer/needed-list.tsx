import type { Host } from "../../hosts/host";
import { CellLink } from "../parts/cell-link";
import type { Needed } from "./still-needed";

/** What is still to be typed, each with the way to its cell. */
export function NeededList({ host, needed }: { host: Host; needed: readonly Needed[] }) {
  if (needed.length === 0) return null;
  return (
    <section aria-labelledby="canfall-needed">
      <h3 id="canfall-needed">Still needed</h3>
      <ol>
        {needed.map(({ label, cell }) => (
          <li key={label}>
            <CellLink host={host} cell={cell} words={label} />{" "}
            <span className="note">{`${cell.sheet}!${cell.address}`}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
