import { type BaseValueObject, ErrorType, Interpreter, LambdaValueObjectObject } from "@univerjs/preset-sheets-core";
import { errorResult } from "../../functions/results";
import type { Fix } from "../fix";
import { branchLeft } from "./branches";
import { FUNCTION, type Node, refusedSize, refusedText } from "./formula-size";

const LIMIT_MS = 5000;
/** Parts of formulas that are calculated between two looks at the clock. */
const PARTS_A_LOOK = 16;
/** How often a formula may call itself, one call within another. */
const MOST_CALLS = 128;

type Answer = ReturnType<Interpreter["execute"]>;

interface Work {
  execute(given: unknown): Answer;
  executeAsync(given: unknown): Promise<Answer>;
  _execute(node: Node, right?: number, down?: number): number;
  _executeAsync(node: Node, right?: number, down?: number): Promise<number>;
  _runtimeService: { isStopExecution(): boolean };
}

interface Lambda {
  _lambdaNode: { setNotEmpty(state: boolean): void } | null;
  execute(...given: BaseValueObject[]): BaseValueObject;
}

const work = Interpreter.prototype as unknown as Work;
const lambda = LambdaValueObjectObject.prototype as unknown as Lambda;
const REFERENCE = 1;

const isParameterless = (node: Node) => node.getToken().toUpperCase() === "LAMBDA" && node.isEmptyParamFunction?.();
const inWords = (message: string) => errorResult(ErrorType.VALUE, message);
const failed = (problem: unknown) =>
  inWords(`the formula could not be calculated: ${problem instanceof Error ? problem.message : String(problem)}`);

/** Ends a formula that fails, takes too long, calls itself without end or asks for too many cells, and says so in its cell. */
export const endless: Fix = {
  name: "endless",
  wrong:
    "One formula that fails, such as =LET(f,LAMBDA(f,f(f)),f(f)), or that never ends, ends calculation for the whole workbook.",
  seen: "0.25.1",
  members: () => [
    ...["execute", "executeAsync", "_execute", "_executeAsync"].map((name): [string, object, string] => [
      "Interpreter",
      work,
      name,
    ]),
    ["LambdaValueObjectObject", lambda, "execute"],
  ],
  mend() {
    const { execute, executeAsync } = work;
    const { execute: call } = lambda;
    let inside = 0;
    let calls = 0;
    let endAt = 0;
    let refused = "";
    const begin = () => {
      if (inside === 0) {
        endAt = performance.now() + LIMIT_MS;
        refused = "";
        calls = 0;
      }
      inside += 1;
    };
    let looks = 0;
    const ended = (): boolean => {
      looks += 1;
      if (!refused && looks % PARTS_A_LOOK === 0 && performance.now() > endAt)
        refused = `the formula was ended after ${LIMIT_MS / 1000} s`;
      return refused !== "";
    };
    /** Makes a part ready whose own parts are calculated; answers whether it may be calculated. */
    const ready = (node: Node, right: number, down: number): boolean => {
      if (node.nodeType === REFERENCE) node.setRefOffset?.(right, down);
      refused ||= refusedSize(node);
      return !refused;
    };
    work._execute = function (node, right = 0, down = 0) {
      if (ended() || this._runtimeService.isStopExecution()) return 1;
      let left: Node | null | undefined;
      for (const child of node.getChildren()) {
        if (child === left) continue;
        if (isParameterless(child)) child.execute();
        else this._execute(child, right, down);
        if (left === undefined) left = branchLeft(node);
      }
      if (!ready(node, right, down)) return 0;
      node.execute();
      refused ||= refusedText(node);
      return 0;
    };
    work._executeAsync = async function (node, right = 0, down = 0) {
      if (ended() || this._runtimeService.isStopExecution()) return 1;
      let left: Node | null | undefined;
      for (const child of node.getChildren()) {
        if (child === left) continue;
        if (isParameterless(child)) child.execute();
        else await this._executeAsync(child, right, down);
        if (left === undefined) left = branchLeft(node);
      }
      if (!ready(node, right, down)) return 1;
      if (node.nodeType === FUNCTION && node.isAsync?.()) await node.executeAsync?.();
      else node.execute();
      refused ||= refusedText(node);
      return 0;
    };
    work.execute = function (given) {
      begin();
      try {
        const answer = execute.call(this, given);
        return refused ? inWords(refused) : answer;
      } catch (problem) {
        return failed(problem);
      } finally {
        inside -= 1;
      }
    };
    work.executeAsync = async function (given) {
      begin();
      try {
        const answer = await executeAsync.call(this, given);
        return refused ? inWords(refused) : answer;
      } catch (problem) {
        return failed(problem);
      } finally {
        inside -= 1;
      }
    };
    lambda.execute = function (...given) {
      if (calls >= MOST_CALLS) {
        refused ||= `the formula calls itself more than ${MOST_CALLS} times`;
        return inWords(refused);
      }
      calls += 1;
      try {
        return call.apply(this, given);
      } finally {
        calls -= 1;
        this._lambdaNode?.setNotEmpty(true);
      }
    };
  },
};
