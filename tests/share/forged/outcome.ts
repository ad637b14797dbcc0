import { InputError } from "../../../src/core/errors";
import { checkCopy } from "../../../src/share/check/check-copy";
import { ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";

/** What the check says of a file in short. */
export async function outcomeOf(
  file: Uint8Array,
): Promise<{ result: "agrees" | "findings" | "refused"; said: string }> {
  try {
    const { agrees, findings, figures } = await checkCopy(file);
    const first = findings[0]?.text ?? figures.find((figure) => !figure.agrees)?.label ?? "";
    return { result: agrees ? "agrees" : "findings", said: first };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { result: "refused", said: error.message };
  }
}

export function forged(copy: Uint8Array, { make, packed }: Forgery): Uint8Array {
  const file = new ForgedFile(copy);
  make(file);
  return packed ? packed(file.bytes()) : file.bytes();
}

/** Whether a forged copy was found, or, where it accuses nobody, was named. */
export async function found(copy: Uint8Array, forgery: Forgery): Promise<{ found: boolean; said: string }> {
  const { result, said } = await outcomeOf(forged(copy, forgery));
  return { found: forgery.named ? result === "agrees" && said !== "" : result !== "agrees", said };
}
