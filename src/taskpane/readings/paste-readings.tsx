import { Button, Field, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import type { Area } from "../../cells/area";
import { boxOf, reference, spill } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import { InputError } from "../../core/errors";
import type { Host } from "../../hosts/host";
import type { Question } from "../parts/task/question";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import type { Act } from "../workbook/act";
import { siteOf } from "../workbook/insert";
import { readNamed } from "../workbook/named";
import { type Write, writeAll } from "../workbook/writes";
import { type Pasted, pastedReadings } from "./pasted-readings";

const counted = (count: number) => (count > 1 ? ` (${count} places are filled)` : "");

/** Where the places of the cans go; places that the paste does not give stay as they are. */
async function placeWrites(host: Host, { across, along }: NonNullable<Pasted["places"]>): Promise<Write[]> {
  const { Cans_Across_m, Cans_Along_m } = await readNamed(host, ["Cans_Across_m", "Cans_Along_m"]);
  const [columns, rows] = [Cans_Across_m?.area, Cans_Along_m?.area];
  if (!columns || !rows) throw new Error("This workbook has no cells for the places of cans: leave out the m");
  return [
    { area: spill(columns, 1, across.length)!, inputs: [across] },
    { area: spill(rows, along.length, 1)!, inputs: along.map((place) => [place]) },
  ];
}

/** What would be overwritten, if anything. */
async function firstTaken(host: Host, writes: readonly Write[]) {
  for (const { area, inputs } of writes) {
    const { taken } = await siteOf(host, area, inputs.length, inputs[0]!.length);
    if (taken) return taken;
  }
  return null;
}

/** How many readings are in the places for cans, and are not among those that are written over. */
async function othersBeside(host: Host, area: Area, [rows, columns]: readonly [number, number]): Promise<number> {
  const cells = await host.read(area);
  const filled = (cell: Cell) => cell !== null && cell !== "";
  return cells
    .map((line, row) => line.filter((cell, column) => filled(cell) && (row >= rows || column >= columns)).length)
    .reduce((sum, count) => sum + count, 0);
}

const beside = (count: number) =>
  count === 0
    ? ""
    : ` ${count} other ${count === 1 ? "reading stays" : "readings stay"} and ${count === 1 ? "counts" : "count"} with these: clear the old ones first where this is a new test.`;

/** Puts readings from a note, a message or another table into the places for cans, from the first one on. */
export function PasteReadings({ host, area, keep }: { host: Host; area: Area; keep: (act: Act) => void }) {
  const [text, setText] = useState("");
  const task = useTask();

  async function put(): Promise<string | Question> {
    const { readings: inputs, places } = pastedReadings(text);
    const [rows, columns] = [inputs.length, inputs[0]!.length];
    const most = boxOf(area);
    if (rows > most.rows || columns > most.columns) {
      const rule = `fit ${most.columns} places across and ${most.rows} along`;
      throw new InputError("readings", rule, `${columns} across and ${rows} along`);
    }
    const target = spill(area, rows, columns)!;
    const writes = [{ area: target, inputs }, ...(places ? await placeWrites(host, places) : [])];
    const act = async () => {
      keep(await writeAll(host, writes, "entry"));
      setText("");
      return `The readings are in ${reference(target)}${places ? ", their places beside them" : ""}. Undo takes them out`;
    };
    const taken = await firstTaken(host, writes);
    const others = await othersBeside(host, area, [rows, columns]);
    if (!taken && others === 0) return act();
    const there = taken
      ? `${taken.address} holds ${taken.holds}${counted(taken.count)}. Replace what is there?`
      : "Put the readings beside what is there?";
    return {
      text: there + beside(others),
      yes: taken ? "Replace" : "Put them there",
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
        hint="Tabs, semicolons or spaces between cans; x for a can that was not read. With places: m in the first cell, then a first line of metres across, and each line begins with its metres along; else type the places on Cans"
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
