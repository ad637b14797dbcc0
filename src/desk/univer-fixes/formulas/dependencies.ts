import type { Injector, RTree } from "@univerjs/core";
import { IDependencyManagerService } from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

type Noted = Parameters<RTree["insert"]>[0];

const service = (injector: Injector) =>
  injector.get(IDependencyManagerService) as unknown as { _dependencyRTreeCache: RTree };

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
      ...ranges.map((name): [string, object, string] => ["RTree", owner._dependencyRTreeCache, name]),
    ];
  },
  mend({ injector }) {
    const { _dependencyRTreeCache: ranges } = service(injector);
    const { insert, remove, removeById, clear } = ranges;
    const known = new Map<unknown, Set<string>>();
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
      remove.call(ranges, noted);
    };
    ranges.removeById = (...sheet) => {
      known.clear();
      removeById.call(ranges, ...sheet);
    };
    ranges.clear = () => {
      known.clear();
      clear.call(ranges);
    };
  },
};
