import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Arcs, Arrangement } from "../../core/layout/heads";
import type { CanField } from "../../core/pattern/can-field";
import { CAN_ROWS, layoutAtCans, measuredCells } from "./cans/at-cans";
import type { LayoutEntries } from "./layout-entries";
import { type Column, FigureTable, layoutCells, type Needs, ROWS } from "./layout-figures";
import { LayoutMap } from "./layout-map";
import { layoutName } from "./layout-name";
import { planOf } from "./layout-plan";
import type { Planned } from "./worker/messages";
import { type Planner, wrongWith } from "./worker/planner";

const MOST = 5;
const USUAL: { arrangement: Arrangement; arcs: Arcs }[] = [
  { arrangement: "border", arcs: "full" },
  { arrangement: "border", arcs: "matched" },
  { arrangement: "inset", arcs: "full" },
  { arrangement: "centre", arcs: "full" },
  { arrangement: "staggered", arcs: "full" },
];

interface Props {
  plans: Planner | null;
  entries: LayoutEntries;
  /** The layout that is typed now. */
  planned: Planned | null;
  needs: Needs;
  measured: CanField | null;
  id: string;
}

/** The name of each kept layout, numbered so that none is twice. */
const nameOf = (planned: Planned, index: number) => `${index + 1}: ${layoutName(planned.plan)}`;

function columnsOf(kept: readonly Planned[], measured: CanField | null, needs: Needs): Column[] {
  const layouts = kept.map((planned, index) => ({
    name: nameOf(planned, index),
    cells: { ...layoutCells(planned, needs), ...(measured && layoutAtCans(planned, measured)) },
  }));
  return measured ? [{ name: "measured bed", cells: measuredCells(measured) }, ...layouts] : layouts;
}

/** Up to five layouts side by side, beside the measured bed where there is one. */
export function Comparison({ plans, entries, planned, needs, measured, id }: Props) {
  const [kept, setKept] = useState<readonly Planned[]>([]);
  const [problem, setProblem] = useState("");

  async function usual(): Promise<void> {
    setProblem("");
    try {
      const all = USUAL.map((stand) => plans!.plan({ ...planOf({ ...entries, ...stand }) }));
      setKept(await Promise.all(all));
    } catch (reason) {
      setProblem(wrongWith(reason).message);
    }
  }

  const cells = new Set(kept.map(({ plan }) => plan.cell));
  return (
    <section aria-labelledby={`${id}-compare`}>
      <h3 id={`${id}-compare`}>Compare</h3>
      <p className="note">
        Up to five layouts, and the measured bed where this workbook holds one: then the layouts are read at the places
        of its cans too, since a few cans miss spots that thousands of windless cells show.
      </p>
      <div className="actions">
        <Button disabled={!planned || kept.length >= MOST} onClick={() => setKept([...kept, planned!])}>
          Keep this layout
        </Button>
        <Button disabled={!plans} onClick={usual}>
          Compare the usual five
        </Button>
        <Button disabled={kept.length === 0} onClick={() => setKept([])}>
          Clear
        </Button>
      </div>
      {problem && (
        <p role="alert" className="problem">
          {problem}
        </p>
      )}
      {kept.length > 0 && (
        <>
          <FigureTable
            columns={columnsOf(kept, measured, needs)}
            rows={[...ROWS, ...CAN_ROWS]}
            caption={
              cells.size === 1
                ? `Computed on cells of ${[...cells][0]} m, without wind`
                : "The cells differ: SC of the driest cell cannot be compared"
            }
          />
          <div className="side-by-side">
            {kept.map((one, index) => (
              <LayoutMap key={nameOf(one, index)} planned={one} id={`${id}-kept-${index}`} title={nameOf(one, index)} />
            ))}
          </div>
        </>
      )}
    </section>
  );
}
