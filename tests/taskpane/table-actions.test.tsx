// @vitest-environment jsdom
import { afterEach, describe, expect, it } from "vitest";
import type { Host } from "../../src/hosts/host";
import { PictureActions } from "../../src/taskpane/parts/files/picture-actions";
import { TableActions } from "../../src/taskpane/parts/files/table-actions";
import { TaskLine } from "../../src/taskpane/parts/task/task-line";
import { useTask } from "../../src/taskpane/parts/task/use-task";
import type { Act } from "../../src/taskpane/workbook/act";
import { memoryHost } from "../support/memory-host";
import { screen } from "../support/screen";

const ROWS = [
  ["Block", "Start", "Minutes"],
  ["A", "22:00", 12.5],
  ["=B", "", 7],
];
let page: Awaited<ReturnType<typeof screen>>;
const kept: Act[] = [];
const opened: string[] = [];

function Actions({ host }: { host: Host }) {
  const task = useTask();
  return (
    <>
      <TableActions
        {...{ host, task, keep: (act) => void kept.push(act), file: "start times.csv", sheet: "Start times" }}
        rows={() => ROWS}
      />
      <PictureActions {...{ host, task, file: "bed map.png" }} png={async () => ({ bytes: new Uint8Array([1]) })} />
      <TaskLine task={task} />
    </>
  );
}

async function open(saves: boolean) {
  const host = {
    ...memoryHost({ Mine: {}, "Start times": {} }),
    saves,
    openPage: (to: string) => void opened.push(to),
  };
  page = await screen(<Actions host={host} />);
  document.execCommand = () => document.dispatchEvent(new Event("copy", { cancelable: true })) === false;
  return host;
}

afterEach(() => page.close());

describe("a table and a picture", () => {
  it("are saved at the desk, where that arrives", async () => {
    await open(true);
    expect(page.text("button")).toEqual(["Save as .csv", "Copy the table", "Copy the picture", "Save as PNG"]);
  });

  it("have no button in Excel that says saved without knowing", async () => {
    await open(false);
    expect(page.text("button")).toEqual([
      "Copy the table",
      "Put it on a new sheet",
      "Save as .csv in the browser",
      "Copy the picture",
      "Save as PNG in the browser",
    ]);
  });

  it("come to a new sheet, texts as texts, and Undo takes it out", async () => {
    const host = await open(false);
    await page.press("Put it on a new sheet");
    await page.shows("The table is on the new sheet Start times 2. Undo takes it out");
    expect(await host.read({ sheet: "Start times 2", address: "A1:C3" })).toEqual([
      ["Block", "Start", "Minutes"],
      ["A", "22:00", 12.5],
      ["=B", null, 7],
    ]);
    await kept.at(-1)!.takeBack();
    expect(await host.sheets()).toEqual(["Mine", "Start times"]);
  });

  it("are copied for a page in the browser that saves them", async () => {
    await open(false);
    await page.press("Save as .csv in the browser");
    await page.shows("press Ctrl+V there (Mac: Cmd+V), and it saves start times.csv");
    expect(opened).toEqual(["save.html?name=start+times.csv"]);
  });
});
