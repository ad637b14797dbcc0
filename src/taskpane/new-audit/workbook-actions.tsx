import { Button, Link } from "@fluentui/react-components";
import type { Host } from "../../hosts/host";
import type { Question } from "../parts/task/question";
import { TaskLine } from "../parts/task/task-line";
import { useTask } from "../parts/task/use-task";
import { words } from "../parts/task/words";
import type { Act } from "../workbook/act";
import { readNamed } from "../workbook/named";
import { addSheets } from "./new-sheets";
import { type TemplateName, templateFile } from "./template-file";

/** A workbook that can be added or opened, and its filled-in example. */
export interface WorkbookKind {
  /** `audit`; the buttons and the sentences name it. */
  noun: string;
  blank: TemplateName;
  /** The file name of a new one. */
  saved: string;
  example: TemplateName;
  savedExample: string;
  /** What the example is. */
  invented: string;
  /** The name of the cell that is selected once the sheets are added. */
  first: string;
  /** What is typed into added sheets, and said of it; left out where nothing is. */
  prepare?: (host: Host) => Promise<{ fill: () => Promise<void>; said: string }>;
}

interface Given {
  host: Host;
  keep: (act: Act) => void;
  kind: WorkbookKind;
}

/** Adds the sheets of a workbook to the open one, or opens it or its example as a workbook of its own. */
export function WorkbookActions({ host, keep, kind }: Given) {
  const task = useTask();

  async function openNew(): Promise<string> {
    const opened = await host.openBook(await templateFile(kind.blank), kind.saved);
    return opened ? `The ${kind.noun} ${host.opened}` : "The open workbook stays.";
  }

  async function openExample(): Promise<string> {
    const opened = await host.openBook(await templateFile(kind.example), kind.savedExample);
    return opened ? `The example ${host.opened} It is ${kind.invented}.` : "The open workbook stays.";
  }

  async function add(): Promise<string | Question> {
    const file = await templateFile(kind.blank);
    const before = await host.sheets();
    const { fill, said } = (await kind.prepare?.(host)) ?? { fill: undefined, said: "" };
    let leftOut = "";
    try {
      const added = await addSheets(host, file, fill);
      keep(added.done);
      leftOut = added.leftOut;
    } catch (reason) {
      const arrived = (await host.sheets()).filter((sheet) => !before.includes(sheet));
      const left = arrived.length > 0 ? `These sheets came all the same: ${arrived.join(", ")}` : "Nothing was changed";
      return {
        text: `${words(reason)}. ${left}. Open the ${kind.noun} as a new workbook instead?`,
        yes: "Open as a new workbook",
        no: "Leave it",
        doing: "Opening a new workbook",
        act: openNew,
      };
    }
    const first = (await readNamed(host, [kind.first]))[kind.first]?.area;
    if (first) await host.select(first);
    return `The ${kind.noun} sheets are behind the sheets that were there. ${said && `${said}. `}${leftOut && `${leftOut}. `}Undo removes them`;
  }

  return (
    <>
      <div className="actions">
        <Button
          appearance="primary"
          disabledFocusable={task.busy !== ""}
          onClick={() => task.attempt(`Adding the ${kind.noun} sheets`, add)}
        >
          Add the {kind.noun} sheets to this workbook
        </Button>
        <Button disabledFocusable={task.busy !== ""} onClick={() => task.attempt("Opening a new workbook", openNew)}>
          Open as a new workbook
        </Button>
        <Button disabledFocusable={task.busy !== ""} onClick={() => task.attempt("Opening the example", openExample)}>
          Open the example
        </Button>
      </div>
      <p className="note">
        If a workbook does not open, take the file:{" "}
        <Link inline href={`${kind.blank}.xlsx`} download={kind.saved} target="_blank" rel="noreferrer">
          {kind.noun}
        </Link>
        ,{" "}
        <Link inline href={`${kind.example}.xlsx`} download={kind.savedExample} target="_blank" rel="noreferrer">
          example
        </Link>
        .
      </p>
      <TaskLine task={task} />
    </>
  );
}
