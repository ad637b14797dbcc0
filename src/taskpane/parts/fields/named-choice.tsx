import { Field, Select } from "@fluentui/react-components";
import { reference } from "../../../cells/box";
import type { Host } from "../../../hosts/host";
import type { Act } from "../../workbook/act";
import { type NamedCell, textIn } from "../../workbook/named";
import { writeAll } from "../../workbook/writes";
import { TaskLine } from "../task/task-line";
import { useTask } from "../task/use-task";

interface Props {
  host: Host;
  label: string;
  found: NamedCell;
  of: readonly string[];
  keep: (act: Act) => void;
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
