import { Field, Select } from "@fluentui/react-components";
import type { Host } from "../hosts/host";
import { reference } from "./address";
import type { Done } from "./done";
import { type NamedCell, textIn } from "./named";
import { TaskLine } from "./task-line";
import { useTask } from "./use-task";
import { writeAll } from "./writes";

interface Props {
  host: Host;
  label: string;
  found: NamedCell;
  of: readonly string[];
  keep: (done: Done) => void;
  /** What is said where the cell is blank. */
  blank?: string;
}

/** A cell of the workbook that holds one of several words. */
export function NamedChoice({ host, label, found, of, keep, blank = "" }: Props) {
  const task = useTask();
  const shown = textIn(found);
  const write = (word: string) =>
    task.attempt("Writing", async () => {
      keep(await writeAll(host, [{ area: found.cell, inputs: [[word]] }], "entry"));
      return "";
    });
  return (
    <div>
      <Field label={label} hint={`kept in ${reference(found.cell)}`}>
        <Select value={shown} onChange={(_, { value }) => write(value)}>
          {!of.includes(shown) && <option value={shown}>{shown || blank}</option>}
          {of.map((word) => (
            <option key={word}>{word}</option>
          ))}
        </Select>
      </Field>
      <TaskLine task={task} />
    </div>
  );
}
