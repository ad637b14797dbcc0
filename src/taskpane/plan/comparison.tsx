import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Plan } from "../../core/layout/coverage";
import type { Arcs, Arrangement } from "../../core/layout/heads";
import type { CanField } from "../../core/pattern/can-field";
import { LEGEND_HEIGHT, Legend } from "../map/picture/legend";
import { type Ground, PAPER, PICTURE_WIDTH } from "../map/picture/plot";
import { bestWords } from "./best-words";
import { CAN_ROWS, layoutAtCans, measuredCells } from "./cans/at-cans";
import type { LayoutEntries } from "./layout-entries";
import { type Column, FigureTable, layoutCells, type Needs, ROWS } from "./layout-figures";
import { groundOf, KEY_WORDS, LayoutMap } from "./layout-map";
import { layoutName } from "./layout-name";
import { planOf } from "./layout-plan";
import type { Planned } from "./worker/messages";
import { type Planner, wrongWith } from "./worker/planner";

/** The person's own and the usual five. */
const MOST = 6;
const USUAL: { arrangement: Arrangement; arcs: Arcs }[] = [
  { arrangement: "border", arcs: "full" },
  { arrangement: "border", arcs: "matched" },
  { arrangement: "inset", arcs: "full" },
  { arrangement: "centre", arcs: "full" },
  { arrangement: "staggered", arcs: "full" },
];

const isSame = (one: Plan, other: Plan) => layoutName(one) === layoutName(other);

interface Props {
  plans: Planner | null;
  entries: LayoutEntries;
  /** The layout that is typed now. */
  planned: Planned | null;
  needs: Needs;
  measured: CanField | null;
  id: string;
}

/** The name of each kept layout, numbered so that none is twice; the first one is the person's own. */
const nameOf = (planned: Planned, index: number) =>
  `${index + 1}: ${layoutName(planned.plan)}${index === 0 ? " (yours)" : ""}`;

/** Ground that holds what each of them shows, so that all are drawn to one scale. */
function groundOfAll(kept: readonly Planned[]): Ground {
  const all = kept.map(groundOf);
  return {
    left: Math.min(...all.map(({ left }) => left)),
    top: Math.min(...all.map(({ top }) => top)),
    right: Math.max(...all.map(({ right }) => right)),
    bottom: Math.max(...all.map(({ bottom }) => bottom)),
  };
}

/** The one key of all maps. */
function Key() {
  return (
    <svg
      viewBox={`0 0 ${PICTURE_WIDTH} ${LEGEND_HEIGHT}`}
      width={PICTURE_WIDTH}
      role="img"
      aria-label="Key of the maps above"
      fontSize="11"
      style={{ maxWidth: "100%", height: "auto" }}
    >
      <rect width={PICTURE_WIDTH} height={LEGEND_HEIGHT} fill={PAPER} />
      <Legend rates={[]} mean={1} top={0} of="nothing">
        {KEY_WORDS}
      </Legend>
    </svg>
  );
}

function columnsOf(kept: readonly Planned[], measured: CanField | null, needs: Needs): Column[] {
  const layouts = kept.map((planned, index) => ({
    name: nameOf(planned, index),
    cells: { ...layoutCells(planned, needs), ...(measured && layoutAtCans(planned, measured)) },
  }));
  return measured ? [{ name: "measured bed", cells: measuredCells(measured) }, ...layouts] : layouts;
}

/** Layouts side by side, beside the measured bed where there is one, and which needs least water. */
export function Comparison({ plans, entries, planned, needs, measured, id }: Props) {
  const [kept, setKept] = useState<readonly Planned[]>([]);
  const [problem, setProblem] = useState("");

  async function usual(): Promise<void> {
    setProblem("");
    try {
      const own = planOf(entries);
      const others = USUAL.map((stand) => planOf({ ...entries, ...stand })).filter((plan) => !isSame(plan, own));
      setKept(await Promise.all([own, ...others].map((plan) => plans!.plan(plan))));
    } catch (reason) {
      setProblem(wrongWith(reason).message);
    }
  }

  const ground = groundOfAll(kept);
  const cells = new Set(kept.map(({ plan }) => plan.cell));
  return (
    <section aria-labelledby={`${id}-compare`}>
      <h3 id={`${id}-compare`}>Compare</h3>
      <p className="note">
        Your layout first, then up to five others, and the measured bed where this workbook holds one: then the layouts
        are read at the places of its cans too, since a few cans miss spots that thousands of windless cells show.
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
          {kept.length > 1 && <p className="seen">{bestWords(kept, needs)}</p>}
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
              <LayoutMap
                key={nameOf(one, index)}
                planned={one}
                id={`${id}-kept-${index}`}
                title={nameOf(one, index)}
                over={ground}
                keyElsewhere
              />
            ))}
          </div>
          <Key />
        </>
      )}
    </section>
  );
}
