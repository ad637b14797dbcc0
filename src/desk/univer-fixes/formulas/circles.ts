import { FormulaDependencyGenerator, type FormulaDependencyTree } from "@univerjs/preset-sheets-core";
import { columnLetters } from "../../../cells/letters";
import { bookOf, type Grid } from "../../../hosts/desk/grid";
import type { Fix } from "../fix";
import { circling } from "./circling";
import { hasFileValue } from "./kept-values";

type Tree = Pick<FormulaDependencyTree, "treeId" | "row" | "column" | "subUnitId" | "unitId"> & {
  toRTreeItem(): object;
};

/** The grid's own service that puts formulas in order. */
interface Order {
  _checkIsCycleDependency(due: Tree[]): boolean;
  _dependencyTreeCache: Map<number, Tree>;
  _dependencyManagerService: { searchDependency(item: object): Set<number> };
  _currentConfigService: {
    getFormulaData(): Record<string, Record<string, Record<number, Record<number, unknown>> | undefined> | undefined>;
  };
}

const order = FormulaDependencyGenerator.prototype as unknown as Order;

type Links = (readonly [from: number, to: number])[];

/** The formulas to which one of the others leads, again and again. */
function ledTo(ids: ReadonlySet<number>, links: Links): Set<number> {
  const left = new Set(ids);
  const inside = links.filter(([from, to]) => left.has(from) && left.has(to));
  const waiting = new Map([...left].map((id) => [id, 0]));
  const next = new Map<number, number[]>();
  for (const [from, to] of inside) {
    waiting.set(to, waiting.get(to)! + 1);
    const others = next.get(from);
    if (others) others.push(to);
    else next.set(from, [to]);
  }
  const free = [...left].filter((id) => waiting.get(id) === 0);
  for (let id = free.pop(); id !== undefined; id = free.pop()) {
    left.delete(id);
    for (const to of next.get(id) ?? []) {
      waiting.set(to, waiting.get(to)! - 1);
      if (waiting.get(to) === 0) free.push(to);
    }
  }
  return left;
}

/** The formulas that lie in circles, or between two of them. */
function inCircles(due: Tree[], readers: (tree: Tree) => Tree[]): Tree[] {
  const links: Links = due.flatMap((tree) => readers(tree).map((reader) => [tree.treeId, reader.treeId] as const));
  const back: Links = links.map(([from, to]) => [to, from]);
  const left = ledTo(ledTo(new Set(due.map(({ treeId }) => treeId)), links), back);
  return due.filter(({ treeId }) => left.has(treeId));
}

/** The formulas of the first circle that can be reached from those that are due. */
function circleFrom(due: Tree[], readers: (tree: Tree) => Tree[]): Tree[] {
  const done = new Set<number>();
  for (const start of due) {
    const path: { tree: Tree; left: Tree[] }[] = [{ tree: start, left: readers(start) }];
    const onPath = new Set([start.treeId]);
    while (path.length > 0) {
      const { tree, left } = path.at(-1)!;
      const next = left.pop();
      if (!next) {
        done.add(tree.treeId);
        onPath.delete(tree.treeId);
        path.pop();
      } else if (onPath.has(next.treeId)) {
        const from = path.findIndex((one) => one.tree.treeId === next.treeId);
        return path.slice(from).map((one) => one.tree);
      } else if (!done.has(next.treeId)) {
        onPath.add(next.treeId);
        path.push({ tree: next, left: readers(next) });
      }
    }
  }
  return [];
}

function place(grid: Grid, { subUnitId, row, column }: Tree): string {
  const sheet = bookOf(grid).getSheetBySheetId(subUnitId)?.getSheetName();
  return `${sheet ? `${sheet}!` : ""}${columnLetters(column + 1)}${row + 1}`;
}

const MOST_NAMED = 5;

function inWords(places: string[], kept: boolean): string {
  const named = [...new Set(places)].slice(0, MOST_NAMED).join(", ");
  if (places.length === 1) {
    const then = kept ? "it keeps the file's value" : "change its formula, until then its figure means nothing";
    return `${named} refers to itself: ${then}`;
  }
  const then = kept ? "They keep the file's values" : "Change one of them, until then their figures mean nothing";
  return `Formulas refer to each other in a circle: ${named}${places.length > MOST_NAMED ? ", …" : ""}. ${then}`;
}

/** Names the cells, until one of them is changed so that the circle is gone. */
export const circles: Fix = {
  name: "circles",
  wrong: "The grid calculates formulas that refer to each other in a circle once, and says nothing of it.",
  seen: "0.25.1",
  members: () => [["FormulaDependencyGenerator", order, "_checkIsCycleDependency"]],
  mend(grid) {
    const { _checkIsCycleDependency: check } = order;
    let known: Tree[] = [];
    order._checkIsCycleDependency = function (due) {
      const found = check.call(this, due);
      if (found) {
        const readers = (tree: Tree) => {
          const ids = this._dependencyManagerService.searchDependency(tree.toRTreeItem());
          return [...ids].flatMap((id) => this._dependencyTreeCache.get(id) ?? []);
        };
        known = circleFrom(due, readers);
        circling.know(inCircles(due, readers));
      } else {
        const ofBook = this._currentConfigService.getFormulaData();
        const formula = (one: Tree) => ofBook[one.unitId]?.[one.subUnitId]?.[one.row]?.[one.column];
        const again = new Set(
          due.map(({ unitId, subUnitId, row, column }) => [unitId, subUnitId, row, column].join(" ")),
        );
        const gone = known.some(
          (one) => !formula(one) || again.has([one.unitId, one.subUnitId, one.row, one.column].join(" ")),
        );
        if (gone) known = [];
        if (known.length === 0) circling.know([]);
      }
      const kept = known.every((one) => hasFileValue(grid, one.subUnitId, one.row, one.column));
      grid.calculation.say(
        "circle",
        known.length > 0
          ? inWords(
              known.map((one) => place(grid, one)),
              kept,
            )
          : "",
      );
      return found;
    };
  },
};
