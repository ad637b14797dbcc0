import { fileURLToPath } from "node:url";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { beforeAll, describe, expect, it } from "vitest";
import { EXAMPLES } from "../../src/functions/examples";

interface Parameter {
  name: string;
  description: string;
  optional?: boolean;
}

interface Listed {
  id: string;
  name: string;
  description: string;
  helpUrl: string;
  parameters: Parameter[];
}

/** The signatures of the specification, in its order; optional arguments in brackets. */
const SIGNATURES = [
  "CU.CHRISTIANSEN(readings, [areas])",
  "DU.QUARTER(readings, [areas])",
  "SC.CAN(readings, [areas])",
  "SC.QUARTER(readings, [areas])",
  "SC.SHARE(readings, share, [areas])",
  "SC.PATCH(grid, share)",
  "INTERVAL(readings, index, [level], [areas])",
  "DEPTH.CAUGHT(readings, mouth)",
  "RATE.CAUGHT(readings, minutes, mouth)",
  "MAR(readings, minutes, mouth, [areas])",
  "RATE.HEAD(flow, spacing, row_spacing)",
  "RUNTIME(readings, minutes, mouth, depth, [basis], [areas])",
  "WATER.ANNUAL(readings, area, depth, days, [basis], [in_bed_share], [areas])",
  "COST.ANNUAL(readings, area, depth, days, price, [basis], [in_bed_share], [areas])",
  "SUMMARY(readings, minutes, mouth, [limits], [areas])",
  "CAN.AREAS(across, along, width, length)",
  "LAYOUT.COVERAGE(width, length, spacing, radius, flow, arrangement, [arcs], [profile], [cell], [row_spacing])",
  "LAYOUT.COMPARE(width, length, spacing, radius, flow, [profile], [cell])",
  "POT.DEPTH(volume, top, [capture])",
  "ETO.HARGREAVES(tmin, tmax, latitude, day)",
  "ETO.PENMAN(tmin, tmax, rhmin, rhmax, wind, sunshine, latitude, elevation, day, [soil_heat])",
  "BED.CAUSES(grid, across, along, width, length, spacing, radius, arrangement, [arcs], [row_spacing], [heads])",
  "BED.INTERVAL(grid, across, along, width, length, spacing, radius, arrangement, index, [arcs], [row_spacing], [heads], [level])",
];

/** Sheets of Excel end at column XFD; R and C followed by numbers are addresses of the other style. */
const LOOKS_LIKE_AN_ADDRESS = /^([A-Z]{1,3}\d+|R\d*C\d*|R\d+|C\d+)$/i;

const WITHOUT_UNIT = ["index", "basis", "limits", "share", "level", "in_bed_share", "arrangement", "arcs"];

function signature({ id, parameters }: Listed): string {
  return `${id}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;
}

describe("the functions as Excel lists them", () => {
  let json = "";
  let functions: Listed[] = [];

  beforeAll(async () => {
    const files = ["uniformity", "application", "water", "summary", "areas", "layout", "demand", "bed"].map((name) =>
      fileURLToPath(new URL(`../../src/functions/${name}.ts`, import.meta.url)),
    );
    const { errors, metadataJson } = await generateCustomFunctionsMetadata(files);
    expect(errors).toEqual([]);
    json = `${metadataJson}\n`;
    functions = JSON.parse(json).functions;
  });

  it("are the ones in functions.json beside this test (vitest -u writes it anew)", async () => {
    await expect(json).toMatchFileSnapshot("functions.json");
  });

  it("have the names, order and arguments of the specification", () => {
    expect(functions.map(signature)).toEqual(SIGNATURES);
  });

  it("have ids that are unique, allowed, at least 3 long, equal to the name and never a cell address", () => {
    const ids = functions.map(({ id }) => id);
    expect(new Set(ids.map((id) => id.replaceAll(".", "_"))).size).toBe(ids.length);
    for (const { id, name } of functions) {
      expect(name).toBe(id);
      expect(id).toMatch(/^[A-Z][A-Z0-9.]{2,}$/);
      expect(id).not.toMatch(LOOKS_LIKE_AN_ADDRESS);
    }
  });

  it("are described in one sentence that names the unit", () => {
    for (const { description } of functions) expect(description).toMatch(/^[A-Z][^.!?\n]*\.$/);
    for (const { description, id } of functions.filter(({ id }) => id !== "SUMMARY")) {
      expect(description, id).toMatch(/\[.+\]/);
    }
  });

  it("say for every argument what it is, with a unit or range", () => {
    for (const { id, parameters } of functions) {
      for (const { name, description } of parameters) {
        expect(description, `${id} ${name}`).toMatch(/^[A-Z].{8,}[^.]$/);
        if (!WITHOUT_UNIT.includes(name)) expect(description, `${id} ${name}`).toMatch(/\[.+\]/);
      }
    }
  });

  it("link to their own place in the help", () => {
    for (const { helpUrl, id } of functions) {
      expect(helpUrl).toBe(`https://localhost:3000/help.html#${id.toLowerCase().replaceAll(".", "-")}`);
    }
  });

  it("have one example each, with every range wrapped so that blanks are never zeros", () => {
    expect(Object.keys(EXAMPLES)).toEqual(functions.map(({ id }) => id));
    for (const [id, formula] of Object.entries(EXAMPLES)) {
      expect(formula.startsWith(`=CANFALL.${id}(`), id).toBe(true);
      expect(formula.replace(/IF\((\w+:\w+)="","x",\1\)/g, ""), id).not.toContain(":");
    }
  });
});
