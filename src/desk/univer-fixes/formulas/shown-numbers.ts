import type { Injector } from "@univerjs/core";
import {
  type ArrayValueObject,
  type BaseValueObject,
  IFunctionService,
  NumberValueObject,
} from "@univerjs/preset-sheets-core";
import type { Fix, Member } from "../fix";

/** The functions that take a number for the text that its format shows. */
const NAMES = [
  "FIND",
  "FINDB",
  "LEFT",
  "LEFTB",
  "LEN",
  "LENB",
  "MID",
  "MIDB",
  "REPLACE",
  "REPLACEB",
  "RIGHT",
  "RIGHTB",
  "SEARCH",
  "SEARCHB",
  "ENCODEURL",
];

const own = (injector: Injector, name: string) => injector.get(IFunctionService).getExecutor(name) || null;

/** A number without the format of its cell. */
function plain(value: BaseValueObject): BaseValueObject {
  if (value?.isArray()) return (value as ArrayValueObject).mapValue(plain);
  const formatted = value?.isNumber() && value.getPattern() !== "";
  return formatted ? NumberValueObject.create(Number(value.getValue())) : value;
}

/** Gives them the number itself. */
export const shownNumbers: Fix = {
  name: "shown-numbers",
  wrong: "The grid's LEN, LEFT, FIND and the like take a number as its cell shows it: LEN of 5 shown as 5.00 gives 4.",
  seen: "0.25.1",
  members: ({ injector }) => NAMES.map((name): Member => [name, own(injector, name), "calculate"]),
  mend({ injector }) {
    for (const name of NAMES) {
      const executor = own(injector, name)!;
      const calculate = executor.calculate.bind(executor);
      executor.calculate = (...given: BaseValueObject[]) => calculate(...given.map(plain));
    }
  },
};
