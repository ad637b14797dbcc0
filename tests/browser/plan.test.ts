import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Desk, type Desks, desks } from "./desk-page";
import { openStep } from "./open-step";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.open();
  await openStep(desk.page, "Layout");
  await pane().getByText("Plan the cans").waitFor();
});
afterAll(() => all?.close());

const pane = () => desk.page.locator("#pane");
const press = (name: string) => pane().getByRole("button", { name, exact: true }).first().click();
const plan = () => pane().locator(".picture svg").first();

describe("planning a layout in a browser", () => {
  test("the worker searches under a pump limit, and the best opens in the plan", async () => {
    await pane().getByText("Pressure, cell, depth, pump").click();
    await pane().getByLabel("Grid of the calculation").fill("0.5");
    await pane().getByLabel("Flow of the pump").fill("6000");
    await press("Search");
    await pane().getByText("within every limit.").waitFor();
    const flows = await pane().locator(".figures tbody tr td:last-child").allTextContents();
    expect(flows.slice(-10).every((flow) => Number(flow) <= 6000)).toBe(true);
    const name = await pane()
      .getByRole("button", { name: /^Open / })
      .first()
      .getAttribute("aria-label");
    await pane()
      .getByRole("button", { name: /^Open / })
      .first()
      .click();
    const layout = name!.split(", ").slice(1).join(", ");
    await expect.poll(() => plan().getAttribute("aria-label")).toContain(layout);
  });

  test("dragging the bed's corner changes its size in the fields and in the plan", async () => {
    const corner = pane().locator(".picture .handles rect").first();
    await corner.scrollIntoViewIfNeeded();
    const box = (await corner.boundingBox())!;
    const before = Number(await pane().getByLabel("Bed width [m]").inputValue());
    await desk.page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await desk.page.mouse.down();
    await desk.page.mouse.move(box.x + box.width / 2 + 30, box.y + box.height / 2, { steps: 4 });
    await desk.page.mouse.up();
    const after = Number(await pane().getByLabel("Bed width [m]").inputValue());
    expect(after).toBeGreaterThan(before);
    await expect.poll(() => plan().getAttribute("aria-label")).toContain(`bed of ${after} by`);
  });

  test("a field sheet lists the cans and holds the picture; Undo takes it out", async () => {
    await press("Add a field sheet to print");
    await pane().getByText("The sheet Field sheet is ready to print").waitFor();
    expect((await desk.read("A6:D7", "Field sheet"))[0]).toEqual(["Can", "Across [m]", "Along [m]", "Caught [mL]"]);
    expect((await desk.read("A7:C7", "Field sheet"))[0]).toEqual([1, 0.3, 0.3]);
    const pictures = await desk.page.evaluate(() => window.desk.host.pictures("Field sheet"));
    expect(pictures.map(({ name }) => name)).toEqual(["Plan of the cans"]);
    await press("Undo");
    await pane().getByText("The sheet Field sheet is taken out").waitFor();
    expect(await desk.page.evaluate(() => window.desk.host.sheets())).not.toContain("Field sheet");
  });

  test("a sheet of live functions computes the layout, and nothing complained", async () => {
    await press("Add a sheet with live functions");
    await pane().getByText("on a sheet of its own as live functions").waitFor();
    await expect.poll(async () => (await desk.read("A15", "Layout"))[0]![0]).toBe("layout");
    expect((await desk.read("A16:A20", "Layout")).flat()).toEqual([
      "border, full circles",
      "border, matched arcs",
      "inset",
      "centre line",
      "staggered",
    ]);
    expect(desk.complaints).toEqual([]);
  });
});
