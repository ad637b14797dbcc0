import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";

const FOLDER = resolve(import.meta.dirname, "../../src/functions");

/** Which parameters of a function take a range. */
export interface Signature {
  id: string;
  ranges: boolean[];
}

/** What Excel knows of our functions: their signatures from functions.json, and the functions themselves. */
export interface AddIn {
  signatures: Signature[];
  functions: Map<string, (...parameters: never[]) => unknown>;
}

/** Reads the add-in's functions as its build does. */
export async function addIn(): Promise<AddIn> {
  const files = readdirSync(FOLDER)
    .filter((name) => name.endsWith(".ts"))
    .map((name) => join(FOLDER, name))
    .filter((file) => readFileSync(file, "utf8").includes("@customfunction"));
  const { metadataJson, associate } = await generateCustomFunctionsMetadata(files, false);
  const known: { id: string; parameters: { dimensionality?: string }[] }[] = JSON.parse(metadataJson).functions;
  const functions: AddIn["functions"] = new Map();
  for (const { sourceFileName, functionName, id } of associate) {
    functions.set(id, (await import(sourceFileName))[functionName]);
  }
  const signatures = known.map(({ id, parameters }) => ({
    id,
    ranges: parameters.map(({ dimensionality }) => dimensionality === "matrix"),
  }));
  return { signatures, functions };
}
