import type { Separators } from "../../hosts/host";

/** A formula as it is typed where these signs are in use; texts in it and names of functions stay. */
export const localised = (formula: string, { decimal, list }: Separators): string =>
  formula
    .split(/("(?:[^"]|"")*")/)
    .map((part, index) =>
      index % 2 === 1 ? part : part.replaceAll(",", list).replace(/(\d)\.(?=\d)/g, `$1${decimal}`),
    )
    .join("");
