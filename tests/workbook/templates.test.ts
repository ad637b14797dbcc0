import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { formulaResults } from "../support/formula-results";
import { calculatedBooks, TEMPLATES } from "../support/templates";

const FOLDER = fileURLToPath(new URL("../../templates", import.meta.url));

/** The parts of an .xlsx file as texts. */
const partsOf = (file: Uint8Array): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(file)).map(([name, bytes]) => [name, strFromU8(bytes)]));

describe.each(Object.keys(TEMPLATES))("templates/%s", (name) => {
  const committed = readFileSync(`${FOLDER}/${name}`);
  let built: Uint8Array;
  beforeAll(async () => {
    [built] = (await calculatedBooks([TEMPLATES[name]!])) as [Uint8Array];
  });

  it("is what the code builds (npm run templates writes it anew)", () => {
    const [theirs, ours] = [partsOf(committed), partsOf(built)];
    expect(Object.keys(theirs).sort()).toEqual(Object.keys(ours).sort());
    expect(Object.keys(ours).filter((part) => theirs[part] !== ours[part])).toEqual([]);
  });

  it("shows no error", () => {
    const errors = [...formulaResults(committed)].filter(([, value]) => String(value).startsWith("#"));
    expect(errors).toEqual([]);
  });
});
