import { Button, Field, Input, Select } from "@fluentui/react-components";
import { useId, useRef, useState } from "react";
import { positive } from "../../core/checks";
import { InputError } from "../../core/errors";
import { TaskLine } from "../parts/task-line";
import { numberOf } from "../parts/typed-number";
import { useTask } from "../parts/use-task";
import type { StepProps } from "../step";
import { useBedReading } from "./bed/use-bed-reading";
import { useKeptCause } from "./bed/use-kept-cause";
import { BedMap } from "./bed-map";
import { CauseSection } from "./cause-section";
import type { Spacings, Way } from "./find-source";
import type { FittedView } from "./map-view";
import { paintCoverage } from "./paint-coverage";
import { placeAtSelection } from "./place-picture";
import { pngOf } from "./png";
import { useMap } from "./use-map";
import { WholeBedSection } from "./whole-bed-section";

const PICTURE = "Canfall map";

function distance(parameter: string, text: string): { value?: number; problem: string } {
  if (text.trim() === "") return { problem: "" };
  try {
    return { value: positive(parameter, numberOf(parameter, text), "m"), problem: "" };
  } catch (error) {
    if (error instanceof InputError) return { problem: error.message };
    throw error;
  }
}

/** The map of the bed: from the workbook's cans or from what is selected. */
export function MapStep({ host, answer, keep }: StepProps) {
  const id = useId();
  const [way, setWay] = useState<Way>("audit");
  const [across, setAcross] = useState("");
  const [along, setAlong] = useState("");
  const [acrossGap, alongGap] = [distance("spacing across", across), distance("spacing along", along)];
  const spacings: Spacings | null =
    acrossGap.value !== undefined && alongGap.value !== undefined
      ? { across: acrossGap.value, along: alongGap.value }
      : null;
  const { source, facts, seen, ask, stamp, problem } = useMap(host, way, answer, spacings);
  const { reading, stop } = useBedReading(ask);
  useKeptCause(host, reading, stamp);
  const [view, setView] = useState<"cans" | FittedView["what"]>("cans");
  const fitted = reading.cause?.fitted;
  const shown = view === "cans" || !fitted ? undefined : { what: view, fitted };
  const marked = reading.cause?.verdict.head;
  const picture = useRef<HTMLDivElement>(null);
  const task = useTask();
  const svg = () => picture.current!.querySelector("svg")!;

  const save = () =>
    task.attempt("Drawing the picture", async () => host.deliver((await pngOf(svg())).bytes, "bed map.png"));
  const place = () =>
    task.attempt("Placing the picture", async () => {
      const words = `${facts!.title}. ${seen!.sentence}`;
      return placeAtSelection(host, keep, { png: await pngOf(svg()), name: PICTURE, alternative: words });
    });

  const paint = () =>
    task.attempt("Painting the Coverage sheet", async () => {
      const { auditBlocks, sourceBlocks } = await import("./coverage-inputs");
      keep(await paintCoverage(host, way === "audit" ? auditBlocks() : sourceBlocks(source!, answer!.settings)));
      return "The Coverage sheet shows these cans and follows their cells. Undo takes it back";
    });

  const gap = (label: string, text: string, found: { problem: string }, change: (text: string) => void) => (
    <Field label={label} validationState={found.problem ? "error" : "none"} validationMessage={found.problem || null}>
      <Input value={text} autoComplete="off" onChange={(_, { value }) => change(value)} />
    </Field>
  );

  return (
    <section aria-labelledby={`${id}-map`}>
      <h2 id={`${id}-map`}>Map</h2>
      <div className="fields">
        <Field label="Cans from">
          <Select value={way} onChange={(_, { value }) => setWay(value as Way)}>
            <option value="audit">the Cans sheet of this workbook</option>
            <option value="grid">selected cells, laid out as in the bed</option>
            <option value="list">selected list: place across, place along, reading</option>
          </Select>
        </Field>
        {way === "grid" && gap("Cans apart across the width [m]", across, acrossGap, setAcross)}
        {way === "grid" && gap("Cans apart along the length [m]", along, alongGap, setAlong)}
      </div>
      <div role="status">
        {problem && <p className="problem">{problem}</p>}
        {seen && <p className="seen">{seen.sentence}</p>}
        {reading.cause && (
          <p className="seen">
            {reading.cause.verdict.sentence} Next: {reading.cause.verdict.next}.
          </p>
        )}
      </div>
      {fitted && (
        <Field label="Shown">
          <Select value={view} onChange={(_, { value }) => setView(value as typeof view)}>
            <option value="cans">what the cans caught</option>
            <option value="fitted">the bed as the heads are fitted to the cans</option>
            <option value="left">measured minus fitted</option>
          </Select>
        </Field>
      )}
      {source && facts && seen && (
        <>
          <div ref={picture} className="picture">
            <BedMap field={source.field} facts={{ ...facts, sentence: seen.sentence, marked }} id={id} shown={shown} />
          </div>
          <div className="actions">
            <Button appearance="primary" onClick={paint}>
              Paint the Coverage sheet
            </Button>
            <Button onClick={place}>Place the picture at the selected cell</Button>
            <Button onClick={save}>Save as PNG</Button>
          </div>
        </>
      )}
      <TaskLine task={task} />
      {seen && way === "audit" && <CauseSection id={id} reading={reading} lack={facts?.bed?.lack ?? ""} />}
      {seen && way === "audit" && (
        <WholeBedSection id={id} reading={reading} stop={stop} reported={facts?.reported ?? {}} />
      )}
    </section>
  );
}
