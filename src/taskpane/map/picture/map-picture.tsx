import { Button, Field, Select } from "@fluentui/react-components";
import { useRef, useState } from "react";
import { PictureActions } from "../../parts/files/picture-actions";
import { TaskLine } from "../../parts/task/task-line";
import { useTask } from "../../parts/task/use-task";
import type { StepProps } from "../../step";
import type { BedReading } from "../bed/use-bed-reading";
import { BedMap } from "../bed-map";
import type { Way } from "../find-source";
import type { FittedView } from "../map-view";
import { paintCoverage } from "../paint-coverage";
import type { MapState } from "../use-map";
import { placeAtSelection } from "./place-picture";
import { pngOf } from "./png";

const PICTURE = "Canfall map";

interface Props extends Pick<StepProps, "host" | "answer" | "keep"> {
  id: string;
  way: Way;
  map: MapState;
  /** What was read from the bed; left out where it is not a bed of the workbook. */
  reading?: BedReading;
}

/** The map with its key, and what can be done with it. */
export function MapPicture({ host, answer, keep, id, way, map: { source, facts, seen }, reading }: Props) {
  const [view, setView] = useState<"cans" | FittedView["what"]>("cans");
  const fitted = reading?.cause?.fitted;
  const shown = view === "cans" || !fitted ? undefined : { what: view, fitted };
  const marked = reading?.cause?.verdict.head;
  const picture = useRef<HTMLDivElement>(null);
  const task = useTask();
  const svg = () => picture.current!.querySelector("svg")!;

  const place = () =>
    task.attempt("Placing the picture", async () => {
      const words = `${facts!.title}. ${seen!.sentence}`;
      return placeAtSelection(host, keep, { png: await pngOf(svg()), name: PICTURE, alternative: words });
    });
  const paint = () =>
    task.attempt("Painting the Coverage sheet", async () => {
      const { auditBlocks, sourceBlocks } = await import("../coverage-inputs");
      keep(await paintCoverage(host, way === "audit" ? auditBlocks() : sourceBlocks(source!, answer!.settings)));
      return "The Coverage sheet shows these cans and follows their cells. Undo takes it back";
    });

  return (
    <>
      {source && facts && seen && (
        <>
          <div ref={picture} className="picture">
            <BedMap field={source.field} facts={{ ...facts, sentence: seen.sentence, marked }} id={id} shown={shown} />
          </div>
          <details>
            <summary>More of the map</summary>
            {fitted && (
              <Field label="Shown">
                <Select value={view} onChange={(_, { value }) => setView(value as typeof view)}>
                  <option value="cans">what the cans caught</option>
                  <option value="fitted">the bed as the heads are fitted to the cans</option>
                  <option value="left">measured minus fitted</option>
                </Select>
              </Field>
            )}
            <div className="actions">
              <Button onClick={paint}>Paint the Coverage sheet</Button>
              <Button onClick={place}>Place the picture at the selected cell</Button>
              <PictureActions {...{ host, task }} png={() => pngOf(svg())} file="bed map.png" />
            </div>
          </details>
        </>
      )}
      <TaskLine task={task} />
    </>
  );
}
