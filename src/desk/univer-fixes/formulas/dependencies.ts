import type { Injector, IUnitRange, RTree } from "@univerjs/core";
import { IDependencyManagerService } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

type Noted = Parameters<RTree["insert"]>[0];

/** A formula with the ranges that it reads. */
interface Reader {
  treeId: number;
  rangeList: IUnitRange[];
}

interface Service {
  _dependencyRTreeCache: RTree;
  addDependencyRTreeCache(reader: Reader): void;
}

const service = (injector: Injector) => injector.get(IDependencyManagerService) as unknown as Service;

const isSame = (some: IUnitRange[] | undefined, others: IUnitRange[]) =>
  some?.length === others.length && some.every((one, i) => one === others[i]);

const isOneCell = ({ startRow, endRow, startColumn, endColumn }: Noted["range"]) =>
  startRow === endRow && startColumn === endColumn;

/** Notes each range once. */
export const dependencies: Fix = {
  name: "dependencies",
  wrong:
    "With every calculation the grid notes once more which ranges each formula reads, and becomes slower from entry to entry.",
  seen: "0.25.1",
  members({ injector }) {
    const owner = service(injector);
    const ranges = ["insert", "remove", "removeById", "clear"];
    return [
      ["IDependencyManagerService", owner, "_dependencyRTreeCache"],
      ["IDependencyManagerService", owner, "addDependencyRTreeCache"],
      ...ranges.map((name): [string, object, string] => ["RTree", owner._dependencyRTreeCache, name]),
    ];
  },
  mend({ injector }) {
    const owner = service(injector);
    const { _dependencyRTreeCache: ranges, addDependencyRTreeCache } = owner;
    const { insert, remove, removeById, clear } = ranges;
    const known = new Map<unknown, Set<string>>();
    const whole = new Map<unknown, IUnitRange[]>();
    owner.addDependencyRTreeCache = function (reader) {
      if (isSame(whole.get(reader.treeId), reader.rangeList)) return;
      addDependencyRTreeCache.call(this, reader);
      whole.set(reader.treeId, [...reader.rangeList]);
    };
    ranges.insert = (noted) => {
      const { unitId, sheetId, range, id } = noted;
      if (!isOneCell(range)) {
        const { startRow, endRow, startColumn, endColumn } = range;
        const key = [unitId, sheetId, startRow, endRow, startColumn, endColumn].join(" ");
        const ofFormula = known.get(id) ?? new Set();
        if (ofFormula.has(key)) return;
        known.set(id, ofFormula.add(key));
      }
      insert.call(ranges, noted);
    };
    ranges.remove = (noted) => {
      known.delete(noted.id);
      whole.delete(noted.id);
      remove.call(ranges, noted);
    };
    ranges.removeById = (...sheet) => {
      known.clear();
      whole.clear();
      removeById.call(ranges, ...sheet);
    };
    ranges.clear = () => {
      known.clear();
      whole.clear();
      clear.call(ranges);
    };
  },
};
