import type { Book } from "../../xlsx/desk-file/book";

/** A sheet and names that only share copies have. */
const EVIDENCE = /^Evidence(_|$)/i;

/** Whether a workbook says that it is a share copy. */
export const isShareCopy = ({ names, sheets }: Book): boolean =>
  [...names, ...sheets].some(({ name }) => EVIDENCE.test(name));

/** What is said of one that was opened. */
export const UNCHECKED = "a share copy, not checked. Check it first: step Share, Check a copy.";
/** What is said of it once its check was asked for. */
export const ASKED = "a share copy; what its check says is in the step Share.";
