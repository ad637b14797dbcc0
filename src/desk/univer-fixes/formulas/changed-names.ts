import { ICommandService } from "@univerjs/core";
import {
  IFunctionService,
  LexerTreeBuilder,
  RemoveDefinedNameMutation,
  SetDefinedNameMutation,
} from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

const lexer = LexerTreeBuilder.prototype as unknown as {
  _simpleCheckDefinedName(formula: string, given: object): boolean;
};

/** Parses formulas anew whose names have changed. */
export const changedNames: Fix = {
  name: "changed-names",
  wrong: "After rows are inserted the grid calculates formulas with a name on the cells that the name meant before.",
  seen: "0.25.1",
  members: ({ injector }) => [
    ["LexerTreeBuilder", lexer, "_simpleCheckDefinedName"],
    ["IFunctionService", injector.get(IFunctionService), "deleteFormulaAstCacheKey"],
  ],
  mend({ injector }) {
    const changed = new Set<string>();
    const functions = injector.get(IFunctionService);
    injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
      if (id !== SetDefinedNameMutation.id && id !== RemoveDefinedNameMutation.id) return;
      changed.add((params as { name: string }).name.toLowerCase());
      functions.deleteFormulaAstCacheKey(""); // which every key holds
    });
    const { _simpleCheckDefinedName } = lexer;
    lexer._simpleCheckDefinedName = function (formula, given) {
      const small = formula.toLowerCase();
      return [...changed].some((name) => small.includes(name)) || _simpleCheckDefinedName.call(this, formula, given);
    };
  },
};
