import type { Cells, Native } from "./arguments";
import { NATIVE, SIGNS } from "./functions";
import { type Node, treeOf } from "./syntax";
import { isArea, NativeError, truthOf, Unsure, type Value } from "./value";

/** Works out a formula, or a part of one, from the cells of a file; throws Unsure where the answer is not certain. */
type Evaluate = (cells: Cells, leaves: readonly Value[]) => Value;

/** A formula taken apart once for all the files that it is calculated for. */
export interface Compiled {
  /** Shared by all formulas of one shape. */
  evaluate: Evaluate;
  /** The constants, areas and names of this one, from left to right. */
  leaves: readonly Value[];
}

const unsure = new Unsure();
const UNSURE: Evaluate = () => {
  throw unsure;
};
const shapes = new Map<string, Evaluate>();

/** An error stays a value here: some functions ask for it. */
function safe(evaluate: Evaluate, cells: Cells, leaves: readonly Value[]): Value {
  try {
    return evaluate(cells, leaves);
  } catch (error) {
    if (error instanceof NativeError) return error;
    throw error;
  }
}

function between(left: Evaluate, right: Evaluate): Evaluate {
  return (cells, leaves) => {
    const [from, to] = [left(cells, leaves), right(cells, leaves)];
    if (!isArea(from) || !isArea(to)) throw new Unsure();
    return { ...from, bottom: to.bottom, right: to.right };
  };
}

function signed(sign: Native, left: Evaluate, right: Evaluate): Evaluate {
  return (cells, leaves) => sign([left(cells, leaves), right(cells, leaves)], cells);
}

function choice(test: Evaluate, met: Evaluate | undefined, unmet: Evaluate | undefined): Evaluate {
  return (cells, leaves) => {
    const holds = truthOf(cells.first(test(cells, leaves)));
    const chosen = holds ? met : unmet;
    return chosen ? chosen(cells, leaves) : holds;
  };
}

function called(name: string, given: readonly Evaluate[]): Evaluate {
  if (name === "IF") return choice(given[0]!, given[1], given[2]);
  const native = NATIVE[name];
  if (!native) return UNSURE;
  return (cells, leaves) =>
    native(
      given.map((one) => safe(one, cells, leaves)),
      cells,
    );
}

/** The shape of a formula, its leaves put behind those before it. */
function shapeOf(node: Node, leaves: Value[]): string {
  switch (node.kind) {
    case "value":
      leaves.push(node.value);
      return "value";
    case "cells":
      leaves.push(node.area ?? node.text);
      return node.area ? "area" : "name";
    case "minus":
      return `-(${shapeOf(node.of, leaves)})`;
    case "sign":
      return `(${shapeOf(node.left, leaves)}${node.sign}${shapeOf(node.right, leaves)})`;
    case "call":
      return `${node.name}(${node.given.map((one) => shapeOf(one, leaves)).join()})`;
  }
}

/** @param next Counts the leaves, in the order of shapeOf */
function evaluationOf(node: Node, next: () => number): Evaluate {
  switch (node.kind) {
    case "value":
    case "cells": {
      const at = next();
      const isName = node.kind === "cells" && !node.area;
      return isName ? (cells, leaves) => cells.named(leaves[at] as string) : (_, leaves) => leaves[at]!;
    }
    case "minus":
      return signed(SIGNS["-"]!, () => 0, evaluationOf(node.of, next));
    case "sign": {
      const [left, right] = [evaluationOf(node.left, next), evaluationOf(node.right, next)];
      return node.sign === ":" ? between(left, right) : signed(SIGNS[node.sign]!, left, right);
    }
    case "call":
      return called(
        node.name,
        node.given.map((one) => evaluationOf(one, next)),
      );
  }
}

/** A formula on a sheet, without `=`. */
export function compiled(formula: string, sheet: string): Compiled {
  try {
    const tree = treeOf(formula, sheet);
    const leaves: Value[] = [];
    const shape = shapeOf(tree, leaves);
    let count = 0;
    const evaluate = shapes.get(shape) ?? evaluationOf(tree, () => count++);
    shapes.set(shape, evaluate);
    return { evaluate, leaves };
  } catch (error) {
    if (error instanceof Unsure) return { evaluate: UNSURE, leaves: [] };
    throw error;
  }
}
