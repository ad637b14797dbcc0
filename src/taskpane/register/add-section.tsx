import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Host } from "../../hosts/host";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import { CheckedFiles } from "../share/checked-files";
import { useCheckedFiles } from "../share/use-checked-files";
import type { Act } from "../workbook/act";
import { useNamed } from "../workbook/use-named";
import { addAudits, unread } from "./add-audits";
import { fileLine } from "./file-line";
import { ownAudit } from "./own-audit";

const AUDIT_CELLS = ["Cans_Readings"];

/** Reads audits from files into the register. */
export function AddSection({ host, keep, id }: { host: Host; keep: (act: Act) => void; id: string }) {
  const files = useCheckedFiles();
  const task = useTask();
  const isAudit = useNamed(host, AUDIT_CELLS).found?.Cans_Readings !== undefined;
  const [skipped, setSkipped] = useState<string[]>([]);

  async function take(given: readonly File[]): Promise<void> {
    task.clear();
    setSkipped([]);
    const checked = await files.check(given);
    if (!checked) return;
    const lines = checked.map(fileLine);
    setSkipped(unread(lines));
    await task.attempt("Adding the audits", () => addAudits(host, lines, keep));
  }

  const own = async () => {
    setSkipped([]);
    await task.attempt("Adding this audit", async () => {
      const line = await ownAudit(host);
      setSkipped(unread([line]));
      return addAudits(host, [line], keep);
    });
  };

  return (
    <section aria-labelledby={`${id}-add`}>
      {isAudit && (
        <Button disabledFocusable={task.busy !== ""} onClick={own}>
          Add the audit of this workbook
        </Button>
      )}
      <h3 id={`${id}-add`}>Add audits from files</h3>
      <p className="note">
        Audit workbooks or share copies: every figure is calculated again from the readings in the file.
      </p>
      <CheckedFiles label="Audits to add" files={files} busy={task.busy !== ""} take={take} />
      <TaskLine task={task} />
      {skipped.length > 0 && (
        <div role="status">
          <p>Not read, and skipped:</p>
          <ul>
            {skipped.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}
