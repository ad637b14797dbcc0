import axe from "axe-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Desk, type Desks, desks } from "./desk-page";
import { openStep } from "./open-step";
import { boxFindings } from "./pane-boxes";

let all: Desks;
let desk: Desk;
beforeAll(async () => {
  all = await desks();
  desk = await all.anew("");
  await desk.page.addStyleTag({ content: NO_FADING });
  await desk.page.evaluate(axe.source);
});
afterAll(() => all?.close());

const NO_PLAN = "The nursery plan is for the blocks";
const NO_AUDIT = "holds no audit";
/** The steps, and what is in each once it has loaded and calculated what it shows: of an audit, and of a nursery plan. */
const READY = {
  audit: {
    "Set up": "Add the audit sheets to this workbook",
    Readings: "Paste readings from elsewhere",
    Answer: "Against your limits",
    Layout: "Plan the cans",
    Cost: "What it is calculated from",
    Share: "Make a share copy",
    Demand: NO_PLAN,
    Schedule: NO_PLAN,
    Register: NO_PLAN,
    "Functions and help": "Enter add-in functions again",
  },
  nursery: {
    "Set up": "Add the audit sheets to this workbook",
    Readings: NO_AUDIT,
    Answer: NO_AUDIT,
    Layout: "Plan the cans",
    Cost: NO_AUDIT,
    Share: "Check a copy",
    Demand: "A pot group",
    Schedule: "Fit the night",
    Register: "Add audits from files",
    "Functions and help": "Enter add-in functions again",
  },
};
type Book = keyof typeof READY;
const BOOKS = Object.keys(READY) as Book[];
/** So that no colour is met on its way from disabled to enabled. */
const NO_FADING = "*, ::before, ::after { transition: none !important }";
/** Window, and width of the pane [px]; where no bar is shown, a pane of 320 px has 310 beside its bar. */
const SIZES = [
  [1366, 768, 310],
  [1366, 768, 400],
  [1366, 768, 900],
  [1920, 1080, 400],
] as const;

/** Opens a step and waits until it is all there. */
async function open(step: string, holds: string): Promise<void> {
  const pane = desk.page.locator("#pane");
  await openStep(desk.page, step);
  await pane.getByText(holds).filter({ visible: true }).first().waitFor();
  await desk.page.evaluate(() => new Promise<void>((idle) => requestIdleCallback(() => idle())));
}

async function opened(book: Book): Promise<void> {
  await desk.page.evaluate(async (file) => {
    window.confirm = () => true;
    const bytes = await (await fetch(file)).arrayBuffer();
    await window.desk.host.openBook(new Uint8Array(bytes), file);
    await window.desk.settled();
  }, `example-${book}.xlsx`);
}

/** What is cut, covered or wrapped in the open step, at each size. */
async function cutSomewhere(): Promise<string[]> {
  const found: string[] = [];
  for (const [width, height, pane] of SIZES) {
    await desk.page.setViewportSize({ width, height });
    await desk.page.evaluate((px) => document.body.style.setProperty("--pane-width", `${px}px`), pane);
    found.push(...(await boxFindings(desk.page)).map((one) => `${pane} px of ${width}: ${one}`));
  }
  return found;
}

const EXCLUDED = [
  // Third-party, as a whole looked at once, below: it is the same in every step.
  ["#grid"],
  // Fluent's own marks at both ends of the page, which pass the focus on at once and are hidden on purpose.
  ["[data-tabster-dummy]"],
];

/** What axe finds, a line each; the grid is third-party and looked at on its own. */
async function findings(context: object, rules: object = {}): Promise<string[]> {
  const violations = await desk.page.evaluate(
    async ([asked, only]) => {
      const { run } = (window as unknown as { axe: typeof axe }).axe;
      return (await run(asked as axe.ElementContext, { ...only, resultTypes: ["violations"] })).violations;
    },
    [context, rules],
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" ")}`);
}

describe("access at the desk", () => {
  describe.each(BOOKS)("with the example %s", (book) => {
    beforeAll(() => opened(book));

    test.each(Object.entries(READY[book]))(
      "%s has no finding of axe, and nothing cut, covered or wrapped",
      async (step, holds) => {
        await open(step, holds);
        expect(await cutSomewhere()).toEqual([]);
        expect(await findings({ exclude: EXCLUDED })).toEqual([]);
        // what is in the page is the same in the dark: only colours are another matter
        await desk.page.emulateMedia({ colorScheme: "dark" });
        expect(await findings({ exclude: EXCLUDED }, { runOnly: ["color-contrast"] })).toEqual([]);
        await desk.page.emulateMedia({ colorScheme: "light" });
      },
    );
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

  test("the steps are reached and changed by keys alone", async () => {
    const tab = (name: string) => desk.page.locator("#pane").getByRole("tab", { name });
    await openStep(desk.page, "Answer");
    await tab("Answer").focus();
    await desk.page.keyboard.press("ArrowRight");
    await desk.page.keyboard.press("Enter");
    expect(await tab("Layout").getAttribute("aria-selected")).toBe("true");
  });
});
