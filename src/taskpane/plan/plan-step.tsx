import { Button } from "@fluentui/react-components";
import { useEffect, useId, useRef, useState } from "react";
import { InputError } from "../../core/errors";
import type { Candidate } from "../../core/layout/search/search";
import { LAYOUT_CAUTIONS } from "../../workbook/cautions";
import { placeAtSelection } from "../map/picture/place-picture";
import { pngOf } from "../map/picture/png";
import { Cautions } from "../parts/cautions";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import type { StepProps } from "../step";
import { numberIn } from "../workbook/named";
import { useNamed } from "../workbook/use-named";
import { CanSection } from "./cans/can-section";
import { Comparison } from "./comparison";
import { firstLayout } from "./first-layout";
import { FIRST_LAYOUT, type LayoutEntries } from "./layout-entries";
import { FigureTable, layoutCells, type Needs, ROWS } from "./layout-figures";
import { LayoutForm } from "./layout-form";
import { LayoutMap } from "./layout-map";
import { layoutName } from "./layout-name";
import { optionalQuantity } from "./layout-plan";
import { addLayoutSheet } from "./live-layout";
import { MeanDifference } from "./mean-difference";
import type { HeadEntries } from "./search/entries";
import { SearchSection } from "./search/section";
import { useMeasured } from "./use-measured";
import { usePlanned, usePlanner } from "./worker/use-planned";

const CAUGHT = ["Used_MAR"];
const PICTURE = "Canfall layout";

/** What is wanted besides evenness, and what is wrong with it. */
function needsOf({ depth, pump }: LayoutEntries): {
  needs: Needs;
  problem: { message: string; parameter: string } | null;
} {
  try {
    const needs = { depth: optionalQuantity("depth", depth, "mm"), pump: optionalQuantity("pump_flow", pump, "L/h") };
    return { needs, problem: null };
  } catch (error) {
    if (error instanceof InputError) return { needs: {}, problem: error };
    throw error;
  }
}

/** The typed text of a layout that a search found with one of its heads. */
function typed({ plan }: Candidate, { radius, flow, shape }: HeadEntries): Partial<LayoutEntries> {
  return {
    spacing: String(plan.spacing),
    rowSpacing: String(plan.rowSpacing),
    arrangement: plan.arrangement,
    arcs: plan.arcs,
    radius,
    flow,
    shape,
    statedPressure: "",
    pressure: "",
  };
}

/** Plan a layout: see what a bed would get before a pipe is bought. */
export function PlanStep({ host, keep }: StepProps) {
  const id = useId();
  const [entries, setEntries] = useState(FIRST_LAYOUT);
  /** The layout of the workbook's bed, where all of it is known. */
  const [own, setOwn] = useState<LayoutEntries | null>(null);
  const caught = numberIn(useNamed(host, CAUGHT).found?.Used_MAR);
  const plans = usePlanner();
  const { planned, problem } = usePlanned(plans, entries);
  const measured = useMeasured(host);
  const picture = useRef<HTMLDivElement>(null);
  const task = useTask();
  const change = (changed: Partial<LayoutEntries>) => setEntries((before) => ({ ...before, ...changed }));
  const { needs, problem: wrongNeed } = needsOf(entries);
  const wrong = problem ?? wrongNeed;

  useEffect(() => {
    firstLayout(host).then(
      (first) => {
        setEntries(first.entries);
        setOwn(first.own ? first.entries : null);
      },
      () => {},
    );
  }, [host]);

  const place = () =>
    task.attempt("Placing the picture", async () => {
      const svg = picture.current!.querySelector("svg")!;
      const alternative = svg.getAttribute("aria-label")!;
      return placeAtSelection(host, keep, { png: await pngOf(svg), name: PICTURE, alternative });
    });
  const live = () =>
    task.attempt("Adding the sheet", async () => {
      keep(await addLayoutSheet(host, entries));
      return "The layout is on a sheet of its own as live functions. Undo takes it out";
    });

  return (
    <section aria-labelledby={`${id}-plan`}>
      <h2 id={`${id}-plan`}>Plan a layout</h2>
      <p className="note">Computed from the heads' own throw, without wind or leaning risers.</p>
      <Cautions of={LAYOUT_CAUTIONS} />
      <LayoutForm entries={entries} problem={wrong} change={change} />
      <div role="status">
        {wrong && <p className="problem">{wrong.message}</p>}
        {planned?.caution && <p className="problem">Take care: {planned.caution}.</p>}
      </div>
      {planned && (
        <>
          <div ref={picture} className="picture">
            <LayoutMap
              planned={planned}
              id={`${id}-now`}
              drag={{
                bed: (width, length) => change({ width: String(width), length: String(length) }),
                gaps: (spacing, rowSpacing) => change({ spacing: String(spacing), rowSpacing: String(rowSpacing) }),
              }}
            />
          </div>
          <p className="note">Drag the white squares: the bed's corner, the gap between heads.</p>
          <FigureTable
            columns={[{ name: layoutName(planned.plan), cells: layoutCells(planned, needs) }]}
            rows={ROWS}
            caption={`Computed on cells of ${planned.plan.cell} m, without wind`}
          />
          {caught !== undefined && entries === own && (
            <MeanDifference computed={planned.judgement.meanRate} caught={caught} />
          )}
          <div className="actions">
            <Button onClick={place}>Place the picture at the selected cell</Button>
            <Button onClick={live}>Add a sheet with live functions</Button>
          </div>
        </>
      )}
      <TaskLine task={task} />
      <Comparison plans={plans} entries={entries} planned={planned} needs={needs} measured={measured} id={id} />
      <SearchSection
        host={host}
        plans={plans}
        entries={entries}
        open={(candidate, head) => {
          change(typed(candidate, head));
          picture.current?.scrollIntoView({ block: "start" });
        }}
        keep={keep}
        id={id}
      />
      {planned && <CanSection host={host} planned={planned} keep={keep} id={id} />}
    </section>
  );
}
