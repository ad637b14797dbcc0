import { ask } from "../../question";

export type SaveAnswer = "other name" | "same name" | "not";

/** Says what saving would lose and asks how to go on. */
export const askBeforeSaving = (sentence: string): Promise<SaveAnswer> =>
  ask<SaveAnswer>(sentence, [
    ["other name", "Save under another name"],
    ["same name", "Save under this name"],
    ["not", "Cancel"],
  ]);

/** Another name for a file: `bed.xlsx` becomes `bed (2).xlsx`. */
export function otherName(name: string): string {
  const [, base = name, number] = /^(.*?)(?: \((\d+)\))?\.xlsx$/i.exec(name) ?? [];
  return `${base} (${Number(number ?? 1) + 1}).xlsx`;
}
