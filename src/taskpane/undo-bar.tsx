import { Button } from "@fluentui/react-components";
import type { Host } from "../hosts/host";
import { TaskLine } from "./parts/task/task-line";
import type { Undo } from "./workbook/use-undo";

/** Takes back what the pane did last, whichever step did it. */
export function UndoBar({ host, undo: { last, undo, task } }: { host: Host; undo: Undo }) {
  return (
    <div className="undo">
      <div className="act">
        <Button disabledFocusable={!last} onClick={undo}>
          Undo
        </Button>
        <span className="note" title={last?.label}>
          {last ? `takes back: ${last.label}` : "nothing to take back"}
        </span>
      </div>
      {host.label === "Excel" && (
        <details className="note">
          <summary>What empties Excel's own Undo</summary>
          Adding and removing sheets, writing or placing a picture on a protected sheet beside its open cells, and the
          self-test. This Undo still takes back what the pane did.
        </details>
      )}
      <TaskLine task={task} />
    </div>
  );
}
