import { zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { InputError } from "../../../src/core/errors";
import { XlsxFile } from "../../../src/xlsx/desk-file/desk-file";
import { HOSTILE } from "./known";

describe("a file that is wrong is refused in one sentence:", () => {
  it.each(HOSTILE.map(([wrong, parts]) => [wrong, parts] as const))("%s", async (wrong, parts) => {
    const file = zipSync(parts());
    const outcome = await XlsxFile.open(file).then(
      () => "opened",
      (problem: unknown) => problem,
    );
    expect(outcome, wrong).toBeInstanceOf(InputError);
    expect((outcome as InputError).message).toMatch(/^the file must [^\n]+, got [^\n]+$/);
    expect((outcome as InputError).message).not.toContain("undefined");
  });
});
