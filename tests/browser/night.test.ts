import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { verifyNight } from "../../src/core/program/verify-night";
import type { Host } from "../../src/hosts/host";
import type { Wanted } from "../../src/hosts/snapshot";
import { PROGRAM_SHEET } from "../../src/taskpane/night/program-sheet";
import { readStartTimes } from "../../src/taskpane/night/start-times";
import { readNow } from "../../src/taskpane/workbook/reading";
import { programOf } from "../../src/workbook/nursery/program/entries";
import { type Desk, type Desks, desks } from "./desk-page";
import { openStep } from "./open-step";
import { pageSnapshot } from "./page-host";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.open();
  await openStep(desk.page, "Schedule");
  await pane().getByRole("button", { name: "Open the example" }).click();
  await pane().getByText("July: 8 blocks").waitFor();
});
afterAll(() => all?.close());

const pane = () => desk.page.locator("#pane");
const press = (name: string) => pane().getByRole("button", { name, exact: true }).click();
/** The desk's own host, as far as reading goes. */
const reader = () => ({ snapshot: (wanted: Wanted) => pageSnapshot(desk.page, wanted) }) as Host;

describe("a night in a browser", () => {
  test("the worker fits the July night of the example, and its start times keep every rule in the sheet", async () => {
    await press("Fit the night");
    await pane().getByText("It fits: finished at").waitFor();
    await press("Write the start times");
    await pane().getByText("start times are in the sheet Start times").waitFor();
    const { program } = programOf((await readNow(reader(), PROGRAM_SHEET))!);
    const { schedule, wrong } = await readStartTimes(reader(), program!);
    expect(schedule).toHaveLength(10);
    expect([wrong, verifyNight(program!, schedule)]).toEqual([[], []]);
    await expect
      .poll(async () => (await desk.read("A4", "Start times"))[0]![0], { timeout: 30_000 })
      .toMatch(/^These start times belong to the Program/);
    expect(await desk.read("I6:I16", "Start times")).toEqual([...Array(10).fill(["ok"]), [""]]);
  });

  test("the picture is in the workbook with its words", async () => {
    await press("Place the picture at the selected cell");
    await pane().getByText("The picture is at").waitFor();
    const pictures = await desk.page.evaluate(() => window.desk.host.pictures("Nursery"));
    expect(pictures[0]!.alternative).toMatch(
      /^Example Nursery \(invented\) · July night · pump 200 L\/min\. Start times of a July night: 8 blocks, 10 pulses/,
    );
  });

  test("a Program of January no longer has these start times, and does not fit", async () => {
    await desk.write("C4", 1, "Program");
    await pane().getByText("The Program was changed since").first().waitFor();
    await expect
      .poll(async () => (await desk.read("A4", "Start times"))[0]![0], { timeout: 30_000 })
      .toMatch(/^The Program is not the one that was fitted/);
    await press("Fit the night");
    await pane().getByText("It does not fit: 17 min past the end of the hours.").waitFor();
    await pane().getByText("The last hours end 17 min later, at 04:47").waitFor();
    await pane().getByText("Each of them alone is enough.").waitFor();
    expect(desk.complaints).toEqual([]);
  });
});
