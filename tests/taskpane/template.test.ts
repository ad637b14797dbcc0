import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

const html = readFileSync(new URL("../../src/taskpane/taskpane.html", import.meta.url), "utf8");

it("the page may load scripts from itself and Office.js from Microsoft, and send nothing elsewhere", () => {
  const policy = /Content-Security-Policy" content="([^"]+)"/.exec(html)![1]!;
  expect(policy.split("; ")).toEqual([
    "default-src 'none'",
    "script-src 'self' https://appsforoffice.microsoft.com",
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ]);
});

it("the policy is before the first script", () => {
  expect(html.indexOf("Content-Security-Policy")).toBeLessThan(html.indexOf("<script"));
  expect(html.match(/<script[^>]*src="([^"]+)"/)![1]).toBe(
    "https://appsforoffice.microsoft.com/lib/1/hosted/office.js",
  );
});
