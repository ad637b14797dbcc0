// @vitest-environment jsdom
import { afterEach, describe, expect, it } from "vitest";
import { GLOSSARY } from "../../src/core/figures/glossary";
import { Pane } from "../../src/taskpane/pane";
import { axeFindings } from "../support/axe-findings";
import { screen } from "../support/screen";
import { at, bedHost } from "./bed";

let page: Awaited<ReturnType<typeof screen>>;
afterEach(() => page.close());

describe("a term of the answer", () => {
  it("says what the glossary has under the pointer, and below it once a key or a finger presses it", async () => {
    const host = bedHost();
    await host.select(at("B2:B7"));
    page = await screen(<Pane host={host} functions={[]} />);
    await page.shows("Against your limits");
    const terms = [...page.place.querySelectorAll<HTMLButtonElement>(".five tbody th button")];
    const meanings = ["application rate", "CU", "DU", "SC", "SC"].map(
      (name) => GLOSSARY.find(({ term }) => term === name)!.meaning,
    );
    expect(terms.map(({ title }) => title)).toEqual(meanings);
    expect(terms.map(({ tabIndex }) => tabIndex)).toEqual([0, 0, 0, 0, 0]);
    await page.press("DU (low quarter)");
    expect(terms.map((term) => term.getAttribute("aria-expanded"))).toEqual([
      "false",
      "false",
      "true",
      "false",
      "false",
    ]);
    await page.shows(`DU (low quarter)${meanings[2]}`);
    expect(await axeFindings(page.place)).toEqual([]);
    await page.press("DU (low quarter)");
    expect(page.place.textContent).not.toContain(meanings[2]);
  });
});
