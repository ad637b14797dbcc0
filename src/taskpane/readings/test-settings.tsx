import { Field, Input, Select } from "@fluentui/react-components";
import { reference } from "../../cells/box";
import { ASKED_FIRST, ENTRIES } from "../../core/figures/entries";
import { entryLabel } from "../../core/figures/entry";
import { RUN_TIME } from "../../core/figures/run-time";
import type { Basis, Entries, EntryName, Unit } from "../answer/entries";
import type { Setting } from "../answer/resolve";
import type { Settings } from "../answer/settings";
import { figure } from "../parts/figure";

interface Props {
  entries: Entries;
  settings: Settings | null;
  /** The sheet that a plain address such as F2 means. */
  sheet: string;
  change: (changed: Partial<Entries>) => void;
}

function hintOf(setting: Setting<number | "mm"> | undefined, unit: string, blank: string): string {
  if (setting?.area && setting.value === undefined) return `${reference(setting.area)} is not filled in yet`;
  if (setting?.value === undefined) return blank;
  if (!setting.area) return "Counts in this pane only; the address of a cell links it to the workbook";
  const value = setting.value === "mm" ? "readings in mm already" : `${figure(setting.value)} ${unit}`.trim();
  return `${value}, from ${reference(setting.area)}`;
}

/** The settings of the test: each a typed number or the address of a cell that holds it. */
export function TestSettings({ entries, settings, sheet, change }: Props) {
  function field(name: EntryName, label: string, unit: string) {
    const setting = settings?.[name];
    const problem = setting?.problem ?? "";
    const hint = hintOf(setting, unit, "A number, or a cell such as Example!F2");
    return (
      <Field
        label={label}
        validationState={problem ? "error" : "none"}
        validationMessage={problem || null}
        hint={problem ? null : hint}
      >
        <Input
          value={entries[name].text}
          autoComplete="off"
          spellCheck={false}
          onChange={(_, { value }) => change({ [name]: { text: value, sheet, touched: true } })}
        />
      </Field>
    );
  }

  return (
    <section aria-labelledby="canfall-settings">
      <h2 id="canfall-settings">Test settings</h2>
      <div className="fields">
        {field("minutes", entryLabel(ENTRIES.Test_Minutes), "min")}
        <Field label="Readings are in">
          <Select value={entries.unit} onChange={(_, { value }) => change({ unit: value as Unit })}>
            <option value="mL">millilitres (mL)</option>
            <option value="mm">millimetres (mm) already</option>
          </Select>
        </Field>
        {entries.unit === "mL" && field("mouth", entryLabel(ASKED_FIRST.Can_Mouth_mm), "mm")}
        {field("depth", `${ASKED_FIRST.Depth_Typed_mm.label} [mm]`, "mm")}
        <Field label={`${RUN_TIME.TIME.name} is set by`}>
          <Select
            value={entries.basis}
            onChange={(_, { value }) => change({ basis: value as Basis, basisTouched: true })}
          >
            <option value="can">the driest can</option>
            <option value="quarter">the low quarter</option>
            <option value="share">a share of the cans</option>
          </Select>
        </Field>
        {field("share", "Share of the cans that must get the depth [0.5 to 1]", "of the cans")}
      </div>
    </section>
  );
}
