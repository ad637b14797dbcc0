import { workbooksAmong } from "../../taskpane/parts/files/dropped-files";
import { clock } from "../clock";
import type { Files } from "./files";
import { askBeforeSaving, otherName } from "./saving/save-question";

interface Parts {
  open: HTMLElement;
  save: HTMLElement;
  say: (sentence: string) => void;
}

interface Acts {
  /** Before a file is written. */
  prepare: () => Promise<void>;
  saved: () => void;
}

/** Wires the buttons above the grid; what went wrong is said beside them. Answers what opens files that were dropped. */
export function fileButtons(
  files: Files,
  { open, save, say }: Parts,
  { prepare, saved }: Acts,
): (dropped: readonly File[]) => void {
  const chooser = document.createElement("input");
  chooser.type = "file";
  chooser.accept = ".xlsx";
  chooser.setAttribute("aria-label", "File to open");
  chooser.hidden = true;
  open.after(chooser);

  let turns = 0;
  /** Says what comes of the last thing that was asked for; one from before that ends later says nothing. */
  const turn = () => {
    turns += 1;
    const own = turns;
    return (sentence: string) => {
      if (own === turns) say(sentence);
    };
  };
  const attempt = async (words: string, work: () => Promise<string>) => {
    const told = turn();
    told(`${words} …`);
    try {
      told(await work());
    } catch (problem) {
      told(`${words} failed: ${problem instanceof Error ? problem.message : String(problem)}`);
    }
  };
  const show = (file: File, more = "") =>
    attempt(`Opening ${file.name}`, async () => {
      await files.load(new Uint8Array(await file.arrayBuffer()), file.name);
      files.focus();
      return files.said + more;
    });

  addEventListener("beforeunload", (event) => {
    if (files.changed()) event.preventDefault();
  });
  open.addEventListener("click", () => {
    if (files.mayGo()) chooser.click();
  });
  chooser.addEventListener("change", () => {
    const [file] = chooser.files ?? [];
    if (!file) return;
    chooser.value = "";
    void show(file);
  });
  save.addEventListener("click", () => {
    void attempt(`Saving ${files.name}`, async () => {
      const losses = await files.losses(prepare);
      const answer = losses === "" ? "same name" : await askBeforeSaving(losses);
      if (answer === "not") return `${files.name}: not saved`;
      if (answer === "other name") files.rename(otherName(files.name));
      files.deliver(await files.save(prepare), files.name);
      saved();
      const missing = files.leftOut();
      if (files.stale) return `${files.name}: saved while figures are out of date; the next program calculates them`;
      if (missing.length === 0 && files.unsure) {
        return `${files.name}: saved; the next program calculates what could not be calculated here`;
      }
      if (missing.length === 0) return `${files.name}: saved at ${clock(new Date())}`;
      return `${files.name}: saved without the ${missing.join(" and ")} that were made here`;
    });
  });

  return (dropped) => {
    const [file] = workbooksAmong(dropped);
    const more = dropped.length > 1 ? ` (one of ${dropped.length} dropped files: one opens at a time)` : "";
    if (!file) turn()(`Opening ${dropped[0]!.name} failed: the file must be an .xlsx workbook`);
    else if (files.mayGo()) void show(file, more);
  };
}
