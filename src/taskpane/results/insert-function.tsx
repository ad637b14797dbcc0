import { Button, Field, Input, Select } from "@fluentui/react-components";
import { useState } from "react";
import type { Area } from "../../cells/area";
import { cellAt, overlap, parseArea, reference } from "../../cells/box";
import type { Host } from "../../hosts/host";
import { isByArea } from "../answer/can-areas";
import type { Settings } from "../answer/settings";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import type { Act } from "../workbook/act";
import { insert } from "../workbook/insert";
import { useNamed } from "../workbook/use-named";
import { areCans } from "../workbook/use-stated";
import { formulaOf } from "./formula";
import { MEASURES } from "./measures";

const AREA_NAMES = ["By_Area", "Cans_Readings", "Cans_Areas_m2"];

interface Props {
  host: Host;
  /** What is selected now. */
  selected: Area | null;
  /** The last selected range that held readings. */
  readings: Area | null;
  settings: Settings | null;
  keep: (act: Act) => void;
}

/** Puts a measure into a cell as a live function. */
export function InsertFunction({ host, selected, readings, settings, keep }: Props) {
  const [chosen, setChosen] = useState(0);
  const [rangeText, setRangeText] = useState<string | null>(null);
  const [targetText, setTargetText] = useState("");
  const [wrong, setWrong] = useState({ range: "", target: "" });
  const task = useTask();

  const measure = MEASURES[chosen]!;
  const sheet = readings?.sheet ?? selected?.sheet ?? "";
  const rangeShown = rangeText ?? (readings ? reference(readings) : "");
  const range = parseArea(rangeShown, sheet);
  const target = parseArea(targetText, sheet);
  const { found: named } = useNamed(host, AREA_NAMES);
  const areas = range && isByArea(named) && areCans(named, range) ? (named?.Cans_Areas_m2?.area ?? null) : null;
  const formula = range && settings ? formulaOf(measure, range, settings, target?.sheet ?? sheet, areas) : null;
  const preview = formula && "text" in formula ? formula : null;

  function setRange(text: string): void {
    setRangeText(text);
    setWrong((before) => ({ ...before, range: "" }));
  }

  function setTarget(text: string): void {
    setTargetText(text);
    setWrong((before) => ({ ...before, target: "" }));
  }

  async function problemOf(area: Area | null, example: string): Promise<string> {
    if (!area) return `must be an address such as ${example}`;
    return (await host.snapshot({})).sheet(area.sheet) === null ? `there is no sheet named ${area.sheet}` : "";
  }

  async function start(): Promise<void> {
    task.clear();
    const found = { range: await problemOf(range, "Example!B2:B26"), target: await problemOf(target, "Example!H2") };
    const cell = target && cellAt(target, 0, 0);
    const near = [range, settings?.minutes.area, settings?.mouth.area, settings?.depth.area, settings?.share.area];
    if (!found.target && cell && near.some((area) => area && overlap(area, cell))) {
      found.target = `${cell.address} holds what the formula reads; choose another cell`;
    }
    setWrong(found);
    if (!preview || !cell || found.range || found.target) return;
    await task.attempt("Inserting", () => insert(host, cell, preview, keep));
  }

  return (
    <section aria-labelledby="canfall-insert">
      <h2 id="canfall-insert">Insert a live function</h2>
      <div className="fields">
        <Field label="Measure">
          <Select value={String(chosen)} onChange={(_, { value }) => setChosen(Number(value))}>
            {MEASURES.map(({ label, unit }, index) => (
              <option key={label} value={index}>
                {label} [{unit}]
              </option>
            ))}
          </Select>
        </Field>
        <Field label="Range of the readings" {...said(wrong.range)}>
          <Input value={rangeShown} spellCheck={false} onChange={(_, { value }) => setRange(value)} />
        </Field>
        <Field label="Into the cell" {...said(wrong.target)}>
          <Input value={targetText} spellCheck={false} onChange={(_, { value }) => setTarget(value)} />
        </Field>
      </div>
      <div className="actions">
        <Button disabled={!selected} onClick={() => selected && setRange(reference(selected))}>
          Use selected range
        </Button>
        <Button disabled={!selected} onClick={() => selected && setTarget(reference(cellAt(selected, 0, 0)))}>
          Use selected cell
        </Button>
      </div>
      <h3 style={{ marginTop: 10 }}>Formula</h3>
      {preview ? <code>{preview.text}</code> : <p>{lackOf(formula)}</p>}
      <div className="actions">
        <Button appearance="primary" disabledFocusable={!preview} onClick={start}>
          Insert
        </Button>
      </div>
      <TaskLine task={task} />
    </section>
  );
}

const said = (problem: string) =>
  problem ? { validationState: "error" as const, validationMessage: problem } : { validationState: "none" as const };

const lackOf = (formula: ReturnType<typeof formulaOf> | null) =>
  formula && "lacking" in formula ? formula.lacking : "Select the readings, or type their address.";
