import { Button, Field, Select } from "@fluentui/react-components";
import { useState } from "react";
import type { Area } from "../../cells/area";
import { MONTHS } from "../../workbook/nursery/months";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import type { StepProps } from "../step";
import { insert } from "../workbook/insert";
import { LIVE_FORMULAS } from "./live-formulas";
import { titleOf } from "./missing";
import type { Group } from "./read-demand";

interface Props extends Pick<StepProps, "host" | "keep"> {
  groups: readonly Group[];
  selected: Area | null;
}

/** Puts a worksheet function beside the workbook's figures, so that one checks the other. */
export function LiveFunction({ host, keep, groups, selected }: Props) {
  const [formula, setFormula] = useState(0);
  const [month, setMonth] = useState(0);
  const [group, setGroup] = useState(0);
  const task = useTask();
  const text = LIVE_FORMULAS[formula]!.text(month + 1, group + 1);
  const choose = (label: string, value: number, change: (to: number) => void, of: readonly string[]) => (
    <Field label={label}>
      <Select value={String(value)} onChange={(_, data) => change(Number(data.value))}>
        {of.map((word, index) => (
          <option key={word} value={index}>
            {word}
          </option>
        ))}
      </Select>
    </Field>
  );
  return (
    <section aria-labelledby="canfall-demand-function">
      <h3 id="canfall-demand-function">Check a figure with a function</h3>
      <p className="note">
        The sheets hold native formulas. These functions of Canfall, in the step Functions with their arguments, repeat
        them in any cell, in mm a day.
      </p>
      <div className="fields">
        {choose(
          "Function",
          formula,
          setFormula,
          LIVE_FORMULAS.map(({ label }) => label),
        )}
        {choose("Month", month, setMonth, MONTHS)}
        {choose("Pot group", group, setGroup, groups.map(titleOf))}
      </div>
      <code>{text}</code>
      <div className="actions">
        <Button
          disabled={!selected}
          onClick={() => task.attempt("Inserting", () => insert(host, selected!, { text, rows: 1, columns: 1 }, keep))}
        >
          Insert at the selected cell
        </Button>
      </div>
      <TaskLine task={task} />
    </section>
  );
}
