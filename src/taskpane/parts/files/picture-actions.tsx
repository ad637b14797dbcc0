import { Button } from "@fluentui/react-components";
import type { Host } from "../../../hosts/host";
import type { Task } from "../task/use-task";
import { copyPicture } from "./clipboard";
import { saveInBrowser } from "./table-actions";

interface Props {
  host: Host;
  task: Task;
  png: () => Promise<{ bytes: Uint8Array }>;
  /** `bed map.png` */
  file: string;
}

/** What can be done with a picture beside placing it: saved where that is known to arrive, and copied. */
export function PictureActions({ host, task, png, file }: Props) {
  const copied = () => copyPicture(png().then(({ bytes }) => bytes));
  const copy = () =>
    task.attempt("Drawing the picture", async () => {
      await copied();
      return "The picture is copied: paste it where you want it";
    });
  const save = () =>
    task.attempt("Drawing the picture", async () => {
      if (host.saves) return host.deliver((await png()).bytes, file);
      await copied();
      return saveInBrowser(host, file);
    });
  return (
    <>
      <Button onClick={copy}>Copy the picture</Button>
      <Button onClick={save}>{host.saves ? "Save as PNG" : "Save as PNG in the browser"}</Button>
    </>
  );
}
