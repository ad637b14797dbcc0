import type { Injector, RTree } from "@univerjs/core";
import { IDependencyManagerService } from "@univerjs/preset-sheets-core";

type Noted = Parameters<RTree["insert"]>[0];

const isOneCell = ({ startRow, endRow, startColumn, endColumn }: Noted["range"]) =>
  startRow === endRow && startColumn === endColumn;

/**
 * With every calculation the grid notes once more which ranges each formula reads, and so becomes slower from entry to
 * entry: each is noted once.
 */
export function mendDependencies(injector: Injector): void {
  const service: unknown = injector.get(IDependencyManagerService);
  const ranges = (service as { _dependencyRTreeCache: RTree })._dependencyRTreeCache;
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
}
