import { Button, Field, Input } from "@fluentui/react-components";
import { useMemo, useRef, useState } from "react";
import { InputError } from "../../../core/errors";
import { canPlaces } from "../../../core/layout/cans/places";
import { type CanPlan, canPlan } from "../../../core/layout/cans/plan";
import { canPlanError } from "../../../core/layout/cans/plan-error";
import { gapCount } from "../../../core/layout/gaps";
import { reachesBorder } from "../../../core/layout/heads";
import type { Host } from "../../../hosts/host";
import { placePicture } from "../../map/picture/place-picture";
import { pngOf } from "../../map/picture/png";
import { numberOf } from "../../parts/fields/typed-number";
import { figure } from "../../parts/figure";
import { TaskLine } from "../../parts/task/task-line";
import { useTask } from "../../parts/task/use-task";
import type { Act } from "../../workbook/act";
import { newSheet } from "../../workbook/new-sheet";
import { LayoutMap } from "../layout-map";
import type { Planned } from "../worker/messages";
import { canWords } from "./can-words";
import { fieldSheet, PICTURE_CELL } from "./field-sheet";
import { fillCans, readingsThere } from "./fill-cans";
import { freeName } from "./free-name";

const SHEET = "Field sheet";

/** The cans for a layout, what they would read of it, or what is wrong. */
function cansFor(planned: Planned, edge: string): { cans: CanPlan; said: string } | { problem: string } {
  const { width, length, spacing, rowSpacing, arrangement } = planned.plan;
  const along = gapCount(length, rowSpacing);
  try {
    const cans = canPlan({
      width,
      length,
      headSpacing: arrangement === "centre" ? null : width / gapCount(width, spacing),
      headRowSpacing: !reachesBorder(arrangement) && along === 1 ? null : length / along,
      edge: numberOf("edge", edge),
    });
    return { cans, said: canWords(canPlanError(planned.coverage, cans)) };
  } catch (error) {
    if (error instanceof InputError) return { problem: error.message };
    throw error;
  }
}

interface Props {
  host: Host;
  planned: Planned;
  keep: (act: Act) => void;
  id: string;
}

/** Where the cans of a test should be under the layout that is shown. */
export function CanSection({ host, planned, keep, id }: Props) {
  const [edge, setEdge] = useState("0.3");
  const task = useTask();
  const picture = useRef<HTMLDivElement>(null);
  const found = useMemo(() => cansFor(planned, edge), [planned, edge]);
  const cans = "cans" in found ? found.cans : null;

  const fill = () =>
    task.attempt("Writing", async () => {
      const act = async () => {
        keep(await fillCans(host, cans!));
        return "The places of the cans are in the Cans sheet";
      };
      const readings = await readingsThere(host);
      if (readings === 0) return act();
      return {
        text: `The Cans sheet holds ${readings} ${readings === 1 ? "reading" : "readings"}, taken at other places perhaps. Change the places all the same?`,
        yes: "Change the places",
        no: "Leave them",
        doing: "Writing",
        act,
      };
    });

  const sheet = () =>
    task.attempt("Making the field sheet", async () => {
      const { buildWorkbook } = await import("../../../workbook/form/build");
      const name = await freeName(host, SHEET);
      await host.insertSheets(await buildWorkbook([fieldSheet(name, cans!)], {}));
      const png = await pngOf(picture.current!.querySelector("svg")!);
      await placePicture(
        host,
        { sheet: name, address: PICTURE_CELL },
        png,
        "Plan of the cans",
        `Plan of ${cans!.count} cans`,
      );
      const all = `A1:H${cans!.count + 6}`;
      keep(newSheet(host, name, all, JSON.stringify(await host.inputs({ sheet: name, address: all }))));
      await host.select({ sheet: name, address: "A1" });
      return `The sheet ${name} is ready to print`;
    });

  return (
    <section aria-labelledby={`${id}-cans`}>
      <h3 id={`${id}-cans`}>Plan the cans</h3>
      <p className="note">
        At least 24 cans, some near each edge and corner. The can spacing is kept away from the head spacing and from
        half of it, which give misleading results.
      </p>
      <div className="fields pairs">
        <Field
          label="Outer cans inside the edge [m]"
          validationState={"problem" in found ? "error" : "none"}
          validationMessage={"problem" in found ? found.problem : null}
          hint={"problem" in found ? null : "0.3 to 0.6 m is usual"}
        >
          <Input value={edge} autoComplete="off" onChange={(_, { value }) => setEdge(value)} />
        </Field>
      </div>
      {cans && "said" in found && (
        <>
          <p>
            <strong>{cans.count} cans</strong>: {cans.across.length} across, {figure(cans.spacing)} m apart, and{" "}
            {cans.along.length} along, {figure(cans.rowSpacing)} m apart.
          </p>
          {[found.said, ...cans.warnings].map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <div ref={picture} className="picture">
            <LayoutMap
              planned={planned}
              id={`${id}-can-map`}
              title={`${cans.count} cans, numbered as you walk`}
              cans={canPlaces(cans)}
            />
          </div>
          <div className="actions">
            <Button onClick={fill}>Fill the places of the Cans sheet</Button>
            <Button onClick={sheet}>Add a field sheet to print</Button>
          </div>
        </>
      )}
      <TaskLine task={task} />
    </section>
  );
}
