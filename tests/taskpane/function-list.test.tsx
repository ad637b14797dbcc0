// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from "vitest";
import { EXAMPLES } from "../../src/functions/examples";
import { matching } from "../../src/taskpane/help/function-info";
import { FunctionList } from "../../src/taskpane/help/function-list";
import { TRADE_WORDS } from "../../src/taskpane/help/trade-words";
import { screen } from "../support/screen";

const INFO = { id: "MAR", name: "MAR", description: "Mean application rate of the bed [mm/h].", parameters: [] };
let page: Awaited<ReturnType<typeof screen>>;

afterEach(async () => {
  await page.close();
  vi.unstubAllGlobals();
});

describe("the function list", () => {
  it("loads functions.json from beside the page when no list is given", async () => {
    const asked: string[] = [];
    vi.stubGlobal("fetch", async (address: string) => {
      asked.push(address);
      return new Response(JSON.stringify({ functions: [INFO] }));
    });
    page = await screen(<FunctionList />);
    await page.shows("1 function");
    await page.shows(EXAMPLES.MAR!);
    expect(asked).toEqual(["functions.json"]);
  });

  it("says so when the list does not load", async () => {
    vi.stubGlobal("fetch", async () => new Response("", { status: 404 }));
    page = await screen(<FunctionList />);
    await page.shows("the list of functions did not load (404)");
  });

  it.each([
    ["dry", "SC.CAN"],
    ["evenness", "CU.CHRISTIANSEN"],
    ["how long", "RUNTIME"],
    ["long how", "RUNTIME"],
    ["Minutes", "RUNTIME"],
    ["money", "COST.ANNUAL"],
    ["water cost", "COST.ANNUAL"],
  ])("searched by %s finds %s", (search, id) => {
    const bare = Object.keys(EXAMPLES).map((each) => ({ id: each, name: each, parameters: [] }));
    expect(matching(bare, search).map((each) => each.id)).toContain(id);
  });

  it("has trade words only for functions that exist", () => {
    expect(Object.keys(EXAMPLES)).toEqual(expect.arrayContaining(Object.keys(TRADE_WORDS)));
  });

  it("says when no function has the words, and what to try", async () => {
    page = await screen(<FunctionList functions={[INFO]} />);
    await page.type("Search by word", "wind");
    await page.shows("No function has “wind”. Try dry, evenness, how long, cost or water.");
  });
});
