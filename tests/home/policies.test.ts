import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

/** Pages of the built folder that load nothing from elsewhere; the pane's own is in tests/taskpane/template.test.ts. */
const PAGES = ["home/index.ejs", "home/save.html", "taskpane/help/help.ejs", "desk/index.html"];

it.each(PAGES)("%s loads and sends nothing elsewhere, and says so before its first script", (page) => {
  const html = readFileSync(new URL(`../../src/${page}`, import.meta.url), "utf8");
  const policy = /Content-Security-Policy"\s+content="([^"]+)"/.exec(html)![1]!;
  const parts = new Map(policy.split(/;\s*/).map((part) => [part.split(" ")[0], part.split(" ").slice(1)]));
  expect(parts.get("default-src")).toEqual(["'none'"]);
  expect([...parts.values()].flat().filter((source) => /^https?:|^\*/.test(source))).toEqual([]);
  expect(parts.get("script-src") ?? []).not.toContain("'unsafe-inline'");
  const script = html.indexOf("<script");
  expect(html.indexOf("Content-Security-Policy")).toBeLessThan(script < 0 ? html.length : script);
});
