import { FormulaDependencyGenerator, type FormulaDependencyTree } from "@univerjs/preset-sheets-core";
import { columnLetters } from "../../../cells/letters";
import { bookOf, type Grid } from "../../../hosts/desk/grid";
import type { Fix } from "../fix";

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

function inWords(places: string[]): string {
  const named = [...new Set(places)].slice(0, MOST_NAMED).join(", ");
  return places.length === 1
    ? `${named} refers to itself: change its formula, until then its figure means nothing`
    : `Formulas refer to each other in a circle: ${named}${places.length > MOST_NAMED ? ", …" : ""}. Change one of them, until then their figures mean nothing`;
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
        known = circleFrom(due, (tree) => {
          const ids = this._dependencyManagerService.searchDependency(tree.toRTreeItem());
          return [...ids].flatMap((id) => this._dependencyTreeCache.get(id) ?? []);
        });
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
      }
      grid.calculation.say("circle", known.length > 0 ? inWords(known.map((one) => place(grid, one))) : "");
      return found;
    };
  },
};
