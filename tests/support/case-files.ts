import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Call } from "./calls";
import type { Expectation } from "./published";

export interface Source {
  author: string;
  year: string;
  title: string;
  place: string;
}

export interface Case extends Call, Expectation {
  what: string;
}

export interface CaseFile {
  name: string;
  source: Source;
  cases: Case[];
}

const FOLDER = new URL("../published/", import.meta.url);

/** One file of tests/published, as it is. */
export function published(name: string): unknown {
  return JSON.parse(readFileSync(new URL(name, FOLDER), "utf8"));
}

/** Every file of tests/published whose cases are calls. */
export function caseFiles(): CaseFile[] {
  const names = readdirSync(fileURLToPath(FOLDER)).filter((name) => name.endsWith(".json"));
  return names
    .map((name) => ({ name, ...(published(name) as Omit<CaseFile, "name">) }))
    .filter(({ cases }) => cases?.every((each) => "function" in each && "what" in each));
}
