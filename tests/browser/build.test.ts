import { execFile } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, test } from "vitest";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { EXAMPLE_MARK, unpacked } from "../../src/xlsx/desk-file/packed-book";
import { built } from "./desk-page";
import { DIST } from "./dist";

const ROOT = resolve(import.meta.dirname, "../..");
const WEBPACK = join(ROOT, "node_modules/webpack/bin/webpack.js");
const KB = 1000;

beforeAll(built);

const text = (name: string): string => readFileSync(join(DIST, name), "utf8");
const zipped = (name: string): number => gzipSync(readFileSync(join(DIST, name)), { level: 9 }).length;

describe("the production build", () => {
  test("functions.js, with the two fits of a bed, takes at most 34 kB, zipped", () => {
    expect(zipped("functions.js")).toBeLessThanOrEqual(34 * KB);
  });

  test("the pane's first load takes at most 300 kB, zipped", () => {
    const scripts = [...text("taskpane.html").matchAll(/src="([^":]+)"/g)].map(([, name]) => name!);
    expect(scripts).toEqual(["functions.js", "taskpane.js"]);
    expect(scripts.reduce((sum, name) => sum + zipped(name), 0)).toBeLessThanOrEqual(300 * KB);
  });

  test("no file that Excel reads names localhost", () => {
    for (const name of ["manifest.xml", "functions.json", "taskpane.html"])
      expect(text(name)).not.toContain("localhost");
  });

  test("the desk carries no hyphenation patterns but those that are part of its grid", () => {
    const patterns = /"0\d{1,7}(,0?\d{1,7}){50}/;
    const scripts = readdirSync(join(DIST, "desk")).filter((name) => name.endsWith(".js"));
    expect(scripts.filter((name) => patterns.test(text(join("desk", name))))).toEqual(["desk.js"]);
  });

  test("the desk carries its font, with the licence", () => {
    const files = readdirSync(join(DIST, "desk"));
    expect(files.filter((name) => name.endsWith(".woff2"))).toHaveLength(8); // four styles, two parts of the alphabet
    expect(text("desk/carlito-license.txt")).toContain("SIL Open Font License, Version 1.1");
  });

  test.each(["example-audit", "example-nursery"])("the desk carries %s as its reader reads the file", async (name) => {
    const file = await XlsxFile.open(new Uint8Array(readFileSync(join(DIST, `desk/${name}.xlsx`))), EXAMPLE_MARK);
    expect(unpacked(text(`desk/${name}.json`))).toStrictEqual(file.book());
  });

  test("every described function is associated with its code", () => {
    const { functions } = JSON.parse(text("functions.json")) as { functions: { id: string }[] };
    const code = text("functions.js");
    expect(functions.length).toBeGreaterThan(0);
    for (const { id } of functions) expect(code).toContain(`CustomFunctions.associate("${id}"`);
  });

  test("Excel is told to pass errors in cells to the functions, which name the cell", () => {
    expect(JSON.parse(text("functions.json")).allowErrorForDataTypeAny).toBe(true);
  });

  test("it is refused without an https address to be served from", async () => {
    const build = promisify(execFile)("node", [WEBPACK, "--env", "production"], {
      cwd: ROOT,
      env: { ...process.env, CANFALL_URL: "http://localhost:3000/" },
    });
    await expect(build).rejects.toThrow(
      "CANFALL_URL must be the https address that dist/ will be served from, such as https://example.org/",
    );
  });
});
