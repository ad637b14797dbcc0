import { Field, Input, Select } from "@fluentui/react-components";
import { useId, useState } from "react";
import { positive } from "../../core/checks";
import { InputError } from "../../core/errors";
import { numberOf } from "../parts/fields/typed-number";
import type { StepProps } from "../step";
import type { Spacings, Way } from "./find-source";
import { MapPicture } from "./picture/map-picture";
import { useMap } from "./use-map";

function distance(parameter: string, text: string): { value?: number; problem: string } {
  if (text.trim() === "") return { problem: "" };
  try {
    return { value: positive(parameter, numberOf(parameter, text), "m"), problem: "" };
  } catch (error) {
    if (error instanceof InputError) return { problem: error.message };
    throw error;
  }
}

/** The map of cells that are selected. */
export function SelectedMap({ host, answer, keep }: Pick<StepProps, "host" | "answer" | "keep">) {
  const id = useId();
  const [way, setWay] = useState<Way>("grid");
  const [across, setAcross] = useState("");
  const [along, setAlong] = useState("");
  const [acrossGap, alongGap] = [distance("spacing across", across), distance("spacing along", along)];
  const spacings: Spacings | null =
    acrossGap.value !== undefined && alongGap.value !== undefined
      ? { across: acrossGap.value, along: alongGap.value }
      : null;
  const map = useMap(host, way, answer, spacings);

  const gap = (label: string, text: string, found: { problem: string }, change: (text: string) => void) => (
    <Field label={label} validationState={found.problem ? "error" : "none"} validationMessage={found.problem || null}>
      <Input value={text} autoComplete="off" onChange={(_, { value }) => change(value)} />
    </Field>
  );

  return (
    <>
      <div className="fields">
        <Field label="Cans from">
          <Select value={way} onChange={(_, { value }) => setWay(value as Way)}>
            <option value="grid">selected cells, laid out as in the bed</option>
            <option value="list">selected list: place across, place along, reading</option>
          </Select>
        </Field>
        {way === "grid" && gap("Cans apart across the width [m]", across, acrossGap, setAcross)}
        {way === "grid" && gap("Cans apart along the length [m]", along, alongGap, setAlong)}
      </div>
      <div role="status">
        {map.problem && <p className="note">{map.problem}</p>}
        {map.seen && <p className="seen">{map.seen.sentence}</p>}
      </div>
      <MapPicture {...{ host, answer, keep, id, way, map }} />
    </>
  );
}
