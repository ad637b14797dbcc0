import {
  AstTreeBuilder,
  CalculateFormulaService,
  ErrorType,
  IFormulaRuntimeService,
  Lexer,
  type LexerNode,
} from "@univerjs/preset-sheets-core";
import { errorResult } from "../../functions/results";
import type { Fix } from "../fix";

interface Step {
  _executeStep(): Promise<true | undefined>;
}

const step = CalculateFormulaService.prototype as unknown as Step;
const lexer = Lexer.prototype;
const builder = AstTreeBuilder.prototype;

/** A parsed formula in place of one that can't be parsed: it answers with an error that says so. */
function unreadable(node: ReturnType<typeof builder.parse>): typeof node {
  const words = "the formula could not be read: look at its names, commas and brackets";
  if (node) node.execute = () => node.setValue(errorResult(ErrorType.VALUE, words));
  return node;
}

/** A formula that can't be read is an error of its cell; a calculation that fails as a whole ends, so that others can follow. */
export const failures: Fix = {
  name: "failures",
  wrong:
    "An exception while formulas are read or ordered leaves the grid waiting for the end of that calculation for ever.",
  seen: "0.25.1",
  members: () => [
    ["CalculateFormulaService", step, "_executeStep"],
    ["Lexer", lexer, "treeBuilder"],
    ["AstTreeBuilder", builder, "parse"],
  ],
  mend({ injector, calculation }) {
    const { _executeStep } = step;
    const { treeBuilder } = lexer;
    const { parse } = builder;
    lexer.treeBuilder = function (...given) {
      try {
        return treeBuilder.apply(this, given);
      } catch {
        return ErrorType.VALUE;
      }
    };
    builder.parse = function (...given) {
      try {
        return parse.apply(this, given);
      } catch {
        return unreadable(parse.call(this, treeBuilder.call(injector.get(Lexer), "=0") as LexerNode));
      }
    };
    step._executeStep = async function () {
      try {
        return await _executeStep.call(this);
      } catch (problem) {
        injector.get(IFormulaRuntimeService).markedAsStopFunctionsExecuted();
        calculation.failed(problem instanceof Error ? problem.message : String(problem));
        return undefined;
      }
    };
  },
};
