import { Field, Input, Select, Textarea } from "@fluentui/react-components";
import { meaningOf } from "../../core/figures/glossary";
import { reachesBorder } from "../../core/layout/heads";
import { ARCS_WORDS, ARRANGEMENT_WORDS, CHOICE_HINTS, type LayoutEntries, SHAPE_WORDS } from "./layout-entries";

type TextName = Exclude<keyof LayoutEntries, "arrangement" | "arcs" | "shape">;

interface Props {
  entries: LayoutEntries;
  problem: { message: string; parameter: string } | null;
  change: (changed: Partial<LayoutEntries>) => void;
}

/** Which quantity of an error belongs to which field. */
const PARAMETERS: Record<TextName, string> = {
  width: "width",
  length: "length",
  spacing: "spacing",
  rowSpacing: "row_spacing",
  radius: "radius",
  flow: "flow",
  statedPressure: "pressure",
  pressure: "other_pressure",
  profile: "profile",
  cell: "cell",
  depth: "depth",
  pump: "pump_flow",
};

const options = (words: Record<string, string>) =>
  Object.entries(words).map(([value, text]) => (
    <option key={value} value={value}>
      {text}
    </option>
  ));

/** Bed, heads and what is wanted of them, as typed. */
export function LayoutForm({ entries, problem, change }: Props) {
  const of = (name: TextName) => (problem?.parameter === PARAMETERS[name] ? problem.message : "");
  const text = (name: TextName, label: string, hint = "") => (
    <Field
      label={label}
      validationState={of(name) ? "error" : "none"}
      validationMessage={of(name) || null}
      hint={of(name) || hint === "" ? null : hint}
    >
      <Input
        value={entries[name]}
        inputMode="decimal"
        autoComplete="off"
        onChange={(_, { value }) => change({ [name]: value })}
      />
    </Field>
  );
  const choice = (name: "arrangement" | "arcs" | "shape", label: string, words: Record<string, string>) => (
    <Field label={label} hint={CHOICE_HINTS[entries[name]] || null}>
      <Select value={entries[name]} onChange={(_, { value }) => change({ [name]: value })}>
        {options(words)}
      </Select>
    </Field>
  );
  return (
    <>
      <div className="fields pairs">
        {text("width", "Bed width [m]")}
        {text("length", "Bed length [m]")}
        {choice("arrangement", "Heads are", ARRANGEMENT_WORDS)}
        {reachesBorder(entries.arrangement) && choice("arcs", "They throw", ARCS_WORDS)}
        {text(
          "spacing",
          "Head spacing across the width [m]",
          "the spacing used may be up to 5 % wider, to fit the bed",
        )}
        {text("rowSpacing", "Head spacing along the length [m]")}
        {text("radius", "Throw [m]", `${meaningOf("throw")}; the maker's figure at the heads' pressure`)}
        {text("flow", "Flow of a full circle [L/h]")}
        {choice("shape", "Rate against distance", SHAPE_WORDS)}
      </div>
      {entries.shape === "measured" && (
        <Field
          label="Distance [m] and rate, one pair a line, from 0 upwards"
          validationState={of("profile") ? "error" : "none"}
          validationMessage={of("profile") || null}
        >
          <Textarea value={entries.profile} rows={5} onChange={(_, { value }) => change({ profile: value })} />
        </Field>
      )}
      <details>
        <summary>Pressure, cell, depth, pump</summary>
        <div className="fields pairs">
          {text("statedPressure", "Pressure of that flow [kPa]", "blank where it is that of the heads")}
          {text("pressure", "Pressure at the heads [kPa]", "flow goes with its square root")}
          {text("cell", "Grid of the calculation [m]")}
          {text("depth", "Net depth wanted [mm]", "for the run time")}
          {text("pump", "Flow of the pump [L/h]", "blank where it does not matter")}
        </div>
      </details>
    </>
  );
}
