import { within } from "../../../core/checks";
import type { Entry } from "../../../core/figures/entry";
import { typedNumber } from "./typed-number";

/** Reads a typed number within an entry's bounds, which the workbook's own checks hold for what is typed into cells only. */
export const entryReader = ({ parameter, unit, least, most }: Entry): ((text: string) => number) =>
  typedNumber(parameter, unit, (name, value) => within(name, value, least, most, unit));
