import { Button } from "@fluentui/react-components";
import { type DragEvent, useRef, useState } from "react";
import { words } from "../task/words";
import { droppedFiles } from "./dropped-files";

interface Props {
  /** What the files are, and what for: `Copies to check`. */
  label: string;
  busy: boolean;
  take: (files: readonly File[]) => Promise<void>;
  fail: (words: string) => void;
}

/** Takes files or a folder, chosen or dropped; the page around it does not see the drop. */
export function DropZone({ label, busy, take, fail }: Props) {
  const [over, setOver] = useState(false);
  const files = useRef<HTMLInputElement>(null);
  const folder = useRef<HTMLInputElement>(null);

  async function dropped(event: DragEvent): Promise<void> {
    event.preventDefault();
    event.stopPropagation();
    setOver(false);
    if (busy) return;
    try {
      await take(await droppedFiles(event.dataTransfer));
    } catch (reason) {
      fail(words(reason));
    }
  }

  function chosen(input: HTMLInputElement): void {
    const list = [...(input.files ?? [])];
    input.value = "";
    if (list.length > 0) void take(list);
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the buttons inside do the same without a mouse
    <div
      className={over ? "drop over" : "drop"}
      onDragOver={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={dropped}
    >
      <p>Drop {label.split(" ")[0]!.toLowerCase()} or a folder of them here, or</p>
      <div className="actions">
        <Button disabledFocusable={busy} onClick={() => files.current?.click()}>
          Choose files
        </Button>
        <Button disabledFocusable={busy} onClick={() => folder.current?.click()}>
          Choose a folder
        </Button>
      </div>
      <input
        ref={files}
        type="file"
        accept=".xlsx"
        multiple
        hidden
        aria-label={label}
        onChange={({ currentTarget }) => chosen(currentTarget)}
      />
      <input
        ref={(input) => {
          folder.current = input;
          input?.setAttribute("webkitdirectory", "");
        }}
        type="file"
        hidden
        aria-label={`Folder of ${label.toLowerCase()}`}
        onChange={({ currentTarget }) => chosen(currentTarget)}
      />
    </div>
  );
}
