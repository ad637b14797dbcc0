import { Button } from "@fluentui/react-components";
import { TaskLine } from "./parts/task-line";
import type { Undo } from "./workbook/use-undo";

/** Takes back what the pane did last, whichever step did it. */
export function UndoBar({ undo: { last, undo, task } }: { undo: Undo }) {
  return (
    <div className="undo">
      <Button disabledFocusable={!last} onClick={undo}>
        Undo
      </Button>
      <span className="note">{last ? `takes back: ${last.label}` : "nothing to take back"}</span>
      <TaskLine task={task} />
    </div>
  );
}
