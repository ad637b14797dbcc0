import { NATIVE, SIGNS } from "./functions";
import type { Cells, Native } from "./given";
import { type Node, treeOf } from "./syntax";
import { isArea, NativeError, truthOf, Unsure, type Value } from "./value";

/** Works out a formula, or a part of one, from the cells of a file; throws Unsure where the answer is not certain. */
export type Evaluate = (cells: Cells) => Value;

const UNSURE: Evaluate = () => {
  throw new Unsure();
};

const constant =
  (value: Value): Evaluate =>
  () =>
    value;

/** An error stays a value here: some functions ask for it. */
function safe(evaluate: Evaluate, cells: Cells): Value {
  try {
    return evaluate(cells);
  } catch (error) {
    if (error instanceof NativeError) return error;
    throw error;
  }
}

function between(left: Evaluate, right: Evaluate): Evaluate {
  return (cells) => {
    const [from, to] = [left(cells), right(cells)];
    if (!isArea(from) || !isArea(to)) throw new Unsure();
    return { ...from, bottom: to.bottom, right: to.right };
  };
}

function signed(sign: Native, left: Evaluate, right: Evaluate): Evaluate {
  return (cells) => sign([left(cells), right(cells)], cells);
}

function choice(test: Evaluate, met: Evaluate | undefined, unmet: Evaluate | undefined): Evaluate {
  return (cells) => {
    const holds = truthOf(cells.first(test(cells)));
    const chosen = holds ? met : unmet;
    return chosen ? chosen(cells) : holds;
  };
}

function called(name: string, given: readonly Evaluate[]): Evaluate {
  if (name === "IF") return choice(given[0]!, given[1], given[2]);
  const native = NATIVE[name];
  if (!native) return UNSURE;
  return (cells) => {
    const values: Value[] = [];
    for (const one of given) values.push(safe(one, cells));
    return native(values, cells);
  };
}

const named =
  (name: string): Evaluate =>
  (cells) =>
    cells.named(name);

function evaluationOf(node: Node): Evaluate {
  switch (node.kind) {
    case "value":
      return constant(node.value);
    case "cells":
      return node.area ? constant(node.area) : named(node.text);
    case "minus":
      return signed(SIGNS["-"]!, constant(0), evaluationOf(node.of));
    case "sign": {
      const [left, right] = [evaluationOf(node.left), evaluationOf(node.right)];
      return node.sign === ":" ? between(left, right) : signed(SIGNS[node.sign]!, left, right);
    }
    case "call":
      return called(node.name, node.given.map(evaluationOf));
  }
}

/** A formula on a sheet, without `=`, taken apart once for all the files that it is worked out for. */
export function compiled(formula: string, sheet: string): Evaluate {
  try {
    return evaluationOf(treeOf(formula, sheet));
  } catch (error) {
    if (error instanceof Unsure) return UNSURE;
    throw error;
  }
}
