import { Button, Field, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import { InputError } from "../core/errors";
import type { Area, Host } from "../hosts/host";
import { boxOf, reference, spill } from "./address";
import type { Done } from "./done";
import { siteOf } from "./insert";
import { pastedReadings } from "./pasted-readings";
import type { Question } from "./question";
import { TaskLine } from "./task-line";
import { useTask } from "./use-task";
import { writeAll } from "./writes";

const counted = (count: number) => (count > 1 ? ` (${count} places are filled)` : "");

/** Puts readings from a note, a message or another table into the places for cans, from the first one on. */
export function PasteReadings({ host, area, keep }: { host: Host; area: Area; keep: (done: Done) => void }) {
  const [text, setText] = useState("");
  const task = useTask();

  async function put(): Promise<string | Question> {
    const inputs = pastedReadings(text);
    const [rows, columns] = [inputs.length, inputs[0]!.length];
    const most = boxOf(area);
    if (rows > most.rows || columns > most.columns) {
      const rule = `fit ${most.columns} places across and ${most.rows} along`;
      throw new InputError("readings", rule, `${columns} across and ${rows} along`);
    }
    const target = spill(area, rows, columns)!;
    const act = async () => {
      keep(await writeAll(host, [{ area: target, inputs }], "entry"));
      setText("");
      return `The readings stand in ${reference(target)}. Undo takes them out`;
    };
    const { taken } = await siteOf(host, target, rows, columns);
    if (!taken) return act();
    return {
      text: `${taken.address} holds ${taken.holds}${counted(taken.count)}. Replace what is there?`,
      yes: "Replace",
      no: "Keep",
      doing: "Writing the readings",
      act,
    };
  }

  return (
    <details>
      <summary>Paste readings from elsewhere</summary>
      <Field
        label="Readings [mL], a line for each row of cans across the bed"
        hint="Tabs, semicolons or spaces between cans; x for a can that was not read"
      >
        <Textarea value={text} rows={4} resize="vertical" onChange={(_, { value }) => setText(value)} />
      </Field>
      <div className="actions">
        <Button disabledFocusable={task.busy !== ""} onClick={() => task.attempt("Writing the readings", put)}>
          Put them into the workbook
        </Button>
      </div>
      <TaskLine task={task} />
    </details>
  );
}
