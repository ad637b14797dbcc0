import { Button, Spinner } from "@fluentui/react-components";
import { DropZone } from "../parts/files/drop-zone";
import { Failure } from "../parts/task/failure";
import type { useCheckedFiles } from "./use-checked-files";

interface Props {
  /** What the files are, and what for: `Copies to check`. */
  label: string;
  files: ReturnType<typeof useCheckedFiles>;
  busy?: boolean;
  take: (files: readonly File[]) => Promise<void>;
}

/** Takes files that are checked, tells how far that is, and stops it. */
export function CheckedFiles({ label, files: { progress, problem, fail, stop }, busy = false, take }: Props) {
  return (
    <>
      <DropZone label={label} busy={busy || progress !== ""} take={take} fail={fail} />
      <div role="status" className="progress">
        {progress && <Spinner size="tiny" labelPosition="after" label={progress} />}
      </div>
      {progress && <Button onClick={stop}>Stop</Button>}
      <Failure words={problem} />
    </>
  );
}
