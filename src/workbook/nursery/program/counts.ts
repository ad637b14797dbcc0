import { ofBlocks } from "./places";

/** What is said of a whole line whose pulses follow one another at once. */
export const WITHOUT_REST = "ok, but pulses without a rest";
const SAYS = ofBlocks("P");

/** How many lines of blocks are filled in. */
export const SHOWN = `SUMPRODUCT((${SAYS}<>"")*1)`;
/** How many of them are complete and right. */
export const WHOLE = `SUMPRODUCT((${SAYS}="ok")+(${SAYS}="no water this month")+(${SAYS}="flow over the pump's")+(${SAYS}="${WITHOUT_REST}"))`;
export const LEFT = `(${SHOWN}-${WHOLE})`;
/** How many want more flow than the pump gives. */
export const STRONG = `SUMPRODUCT((${SAYS}="flow over the pump's")*1)`;

export const counted = (count: string, one: string, many: string) => `${count}&IF(${count}=1,"${one}","${many}")`;
