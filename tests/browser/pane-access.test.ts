import axe from "axe-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Desk, type Desks, desks } from "./desk-page";
import { openStep } from "./open-step";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.anew("");
  await desk.page.addStyleTag({ content: NO_FADING });
  await desk.page.evaluate(axe.source);
});
afterAll(() => all?.close());

/** The steps, and what is in each once it has loaded and calculated what it shows. */
const READY = {
  "Set up": "Add the audit sheets to this workbook",
  Readings: "Paste readings from elsewhere",
  Answer: "Against your limits",
  Layout: "Plan the cans",
  Share: "Make a share copy",
  Demand: "nursery plan",
  Schedule: "nursery plan",
  Register: "nursery plan",
  "Functions and help": "Enter add-in functions again",
};
const STEPS = Object.keys(READY) as (keyof typeof READY)[];
/** So that no colour is met on its way from disabled to enabled. */
const NO_FADING = "*, ::before, ::after { transition: none !important }";

/** Opens a step and waits until it is all there. */
async function open(step: keyof typeof READY): Promise<void> {
  const pane = desk.page.locator("#pane");
  await openStep(desk.page, step);
  await pane.getByText(READY[step]).filter({ visible: true }).first().waitFor();
  await desk.page.evaluate(() => new Promise<void>((idle) => requestIdleCallback(() => idle())));
}

const EXCLUDED = [
  // Third-party, as a whole looked at once, below: it is the same in every step.
  ["#grid"],
  // Fluent's own marks at both ends of the page, which pass the focus on at once and are hidden on purpose.
  ["[data-tabster-dummy]"],
];

/** What axe finds, a line each; the grid is third-party and looked at on its own. */
async function findings(context: object, rules: object = {}): Promise<string[]> {
  const results = await desk.page.evaluate(
    ([asked, only]) => (window as unknown as { axe: typeof axe }).axe.run(asked as axe.ElementContext, only!),
    [context, rules],
  );
  return results.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" ")}`);
}

describe("access at the desk", () => {
  // what is in the page is the same in both: in the dark only colours are another matter
  test.each([
    ["light", {}],
    ["dark", { runOnly: ["color-contrast"] }],
  ] as const)("axe finds nothing around the grid, in any step, in %s colours", async (colorScheme, rules) => {
    await desk.page.emulateMedia({ colorScheme });
    for (const step of STEPS) {
      await open(step);
      expect(await findings({ exclude: EXCLUDED }, rules), `${step}, ${colorScheme}`).toEqual([]);
    }
  });

  test("axe finds nothing in the grid and its bar, with nothing left out", async () => {
    await expect.poll(() => findings({ include: ["#grid"] })).toEqual([]);
  });

  test("what opens a list in the grid's bar is a button for keys", async () => {
    const opener = desk.page.locator('#grid [data-u-command="sheet.command.set-horizontal-text-align"]');
    await opener.first().focus();
    await desk.page.keyboard.press("Enter");
    await expect.poll(() => opener.first().getAttribute("aria-expanded")).toBe("true");
    await desk.page.keyboard.press("Escape");
  });

  test.each([320, 400])("nothing is cut off in a pane of %d px, in any step", async (width) => {
    await desk.page.addStyleTag({ content: `body { grid-template-columns: minmax(0, 1fr) ${width}px !important }` });
    for (const step of STEPS) {
      await open(step);
      const [needs, has] = await desk.page.evaluate(() => {
        const pane = document.getElementById("pane")!;
        return [pane.scrollWidth, pane.clientWidth];
      });
      expect(needs, step).toBe(has);
    }
  });

  test("the steps are reached and changed by keys alone", async () => {
    const tab = (name: string) => desk.page.locator("#pane").getByRole("tab", { name });
    await openStep(desk.page, "Answer");
    await tab("Answer").focus();
    await desk.page.keyboard.press("ArrowRight");
    await desk.page.keyboard.press("Enter");
    expect(await tab("Layout").getAttribute("aria-selected")).toBe("true");
  });
});
