import { TRADE_WORDS } from "./trade-words";

/** A worksheet function as functions.json describes it. */
export interface FunctionInfo {
  id: string;
  name: string;
  description?: string;
  parameters: { name: string; description?: string; optional?: boolean }[];
}

/** The functions whose name, description, arguments or trade words hold every word of the search, in any order. */
export function matching(functions: FunctionInfo[], search: string): FunctionInfo[] {
  const words = search.toLowerCase().split(/\s+/).filter(Boolean);
  return functions.filter(({ id, name, description = "", parameters }) => {
    const told = parameters.map((parameter) => `${parameter.name} ${parameter.description ?? ""}`);
    const text = [`canfall.${name}`, description, TRADE_WORDS[id] ?? "", ...told].join(" ").toLowerCase();
    return words.every((word) => text.includes(word));
  });
}

/** The call as one would type it: optional arguments in brackets. */
export function callOf({ name, parameters }: FunctionInfo): string {
  return `CANFALL.${name}(${parameters.map((each) => (each.optional ? `[${each.name}]` : each.name)).join(", ")})`;
}

/** The list that was built beside the page. */
export async function fetchFunctions(): Promise<FunctionInfo[]> {
  const response = await fetch("functions.json");
  if (!response.ok) throw new Error(`the list of functions did not load (${response.status})`);
  return ((await response.json()) as { functions: FunctionInfo[] }).functions;
}
