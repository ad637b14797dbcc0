import { Button } from "@fluentui/react-components";
import { cellAt, spill } from "../../../cells/box";
import type { Stated } from "../../../cells/stated";
import type { Host } from "../../../hosts/host";
import { csvOf } from "../../../share/csv";
import { freeName } from "../../plan/cans/free-name";
import type { Act } from "../../workbook/act";
import { newSheet } from "../../workbook/new-sheet";
import type { Task } from "../task/use-task";
import { copyTable } from "./clipboard";

type Rows = readonly (readonly Stated[])[];

interface Props {
  host: Host;
  keep: (act: Act) => void;
  task: Task;
  /** The first line is of headings. */
  rows: () => Rows | Promise<Rows>;
  /** `start times.csv` */
  file: string;
  /** The name of a new sheet for it. */
  sheet: string;
  disabled?: boolean;
}

async function asSheet(host: Host, keep: (act: Act) => void, wanted: string, rows: Rows): Promise<string> {
  const name = await freeName(host, wanted);
  await host.addSheet(name);
  const first = cellAt({ sheet: name, address: "A1" }, 0, 0);
  const area = spill(first, rows.length, Math.max(...rows.map(({ length }) => length)))!;
  const typed = (value: Stated) => (typeof value === "string" && value !== "" ? `'${value}` : (value ?? ""));
  await host.write(
    area,
    rows.map((row) => row.map(typed)),
  );
  keep(newSheet(host, name, area.address, JSON.stringify(await host.inputs(area))));
  await host.select(first);
  return `The table is on the new sheet ${name}. Undo takes it out`;
}

/** A page in the browser that saves what was copied. */
export function saveInBrowser(host: Host, file: string): string {
  host.openPage(`save.html?${new URLSearchParams({ name: file })}`);
  return `A page opened in your browser: press Ctrl+V there (Mac: Cmd+V), and it saves ${file}`;
}

/** What can be done with a table: saved where that is known to arrive, else copied, put on a sheet, or saved by a page in the browser. */
export function TableActions({ host, keep, task, rows, file, sheet, disabled = false }: Props) {
  const act = (doing: string, work: (all: Rows) => Promise<string> | string) => () =>
    task.attempt(doing, async () => work(await rows()));
  const copy = act("Copying", async (all) => {
    await copyTable(all);
    return "The table is copied: paste it where you want it";
  });
  const place = act("Adding a sheet", (all) => asSheet(host, keep, sheet, all));
  const save = act("Saving", (all) => host.deliver(csvOf(all), file));
  const saveElsewhere = act("Copying", async (all) => {
    await copyTable(all);
    return saveInBrowser(host, file);
  });
  const buttons: [string, () => Promise<void>][] = host.saves
    ? [
        ["Save as .csv", save],
        ["Copy the table", copy],
      ]
    : [
        ["Copy the table", copy],
        ["Put it on a new sheet", place],
        ["Save as .csv in the browser", saveElsewhere],
      ];
  return buttons.map(([label, press]) => (
    <Button key={label} disabledFocusable={disabled} onClick={press}>
      {label}
    </Button>
  ));
}
