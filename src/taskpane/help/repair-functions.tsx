import { Button } from "@fluentui/react-components";
import type { Host } from "../../hosts/host";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import type { Act } from "../workbook/act";
import { repair } from "./repair";

/** For a workbook whose functions show #NAME? although Canfall is there. */
export function RepairFunctions({ host, keep }: { host: Host; keep: (act: Act) => void }) {
  const task = useTask();
  return (
    <section aria-labelledby="canfall-repair">
      <h2 id="canfall-repair">Functions that show #NAME?</h2>
      <p className="note">
        A workbook that was opened without Canfall may show #NAME? until its functions are entered again. This does so
        on all sheets, and changes nothing else.
      </p>
      <Button
        disabledFocusable={task.busy !== ""}
        onClick={() => task.attempt("Looking for them", () => repair(host, keep))}
      >
        Enter add-in functions again
      </Button>
      <TaskLine task={task} />
    </section>
  );
}
