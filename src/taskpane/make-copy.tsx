import { Button } from "@fluentui/react-components";
import type { Host } from "../hosts/host";
import { copyName } from "./copy-name";
import { copyTools } from "./copy-tools";
import { TaskLine } from "./task-line";
import { useTask } from "./use-task";

/** Makes the copy for the water authority; the open workbook stays as it is. */
export function MakeCopy({ host }: { host: Host }) {
  const task = useTask();

  async function make(): Promise<string> {
    const now = new Date();
    const { shareCopy } = await copyTools();
    await host.settled();
    const file = await shareCopy(await host.bytes(), now);
    return host.deliver(file, await copyName(host, now));
  }

  return (
    <section aria-labelledby="canfall-share">
      <h2 id="canfall-share">Share</h2>
      <p>
        A share copy holds the same sheets with native formulas in place of Canfall's functions, so that anybody can
        recalculate every figure, and an Evidence sheet that lists what was replaced and all that was typed. The open
        workbook stays as it is.
      </p>
      <Button
        appearance="primary"
        disabledFocusable={task.busy !== ""}
        onClick={() => task.attempt("Making the share copy", make)}
      >
        Make a share copy
      </Button>
      <TaskLine task={task} />
    </section>
  );
}
