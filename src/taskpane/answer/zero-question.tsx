import { Button } from "@fluentui/react-components";
import type { Host } from "../../hosts/host";
import { type AnswerFacts, zeroWords } from "../../workbook/answer/answer-sentence";
import { CellLink } from "../parts/cell-link";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import type { Act } from "../workbook/act";
import type { NamedCell } from "../workbook/named";
import { writeAll } from "../workbook/writes";

interface Props {
  host: Host;
  keep: (act: Act) => void;
  zero: NonNullable<AnswerFacts["zero"]>;
  /** The sheet of the cans. */
  sheet: string;
  /** The cell of what the run time is based on, and the first free line of the actions. */
  basis: NamedCell | undefined;
  freeAction: { sheet: string; address: string } | null;
}

/** Asks about a can that reads 0 among wet ones. */
export function ZeroQuestion({ host, keep, zero, sheet, basis, freeAction }: Props) {
  const task = useTask();
  const write = (area: { sheet: string; address: string }, inputs: (string | number)[][]) =>
    task.attempt("Writing", async () => {
      keep(await writeAll(host, [{ area, inputs }], "entry"));
      return "";
    });
  return (
    <fieldset className="problem" aria-label="A can that reads 0">
      <p>
        <CellLink host={host} cell={{ sheet, address: zero.cell }} words={zeroWords(zero)} />: knocked over, blocked
        head or typing?
      </p>
      <div className="actions">
        <Button size="small" onClick={() => write({ sheet, address: zero.cell }, [["x"]])}>
          Mark as unread
        </Button>
        {freeAction && (
          <Button size="small" onClick={() => write(freeAction, [[zeroWords(zero), "Mend the head, then test again"]])}>
            Keep, mend and test again
          </Button>
        )}
        {basis && basis.value !== "low quarter" && (
          <Button size="small" onClick={() => write(basis.cell, [["low quarter"]])}>
            Use the low quarter
          </Button>
        )}
      </div>
      <TaskLine task={task} />
    </fieldset>
  );
}
