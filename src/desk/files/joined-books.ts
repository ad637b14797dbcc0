import type { IResources, IWorkbookData } from "@univerjs/core";

/** Both workbooks' parts, each part by sheet or name. */
function joinedParts(some: IResources = [], more: IResources = []): IResources {
  const names = new Set([...some, ...more].map(({ name }) => name));
  const part = (all: IResources, name: string) => JSON.parse(all.find((one) => one.name === name)?.data || "{}");
  return [...names].map((name) => ({ name, data: JSON.stringify({ ...part(some, name), ...part(more, name) }) }));
}

/** A workbook of the grid with the sheets of another behind its own. */
export const joinedBooks = (one: IWorkbookData, other: Partial<IWorkbookData>): Partial<IWorkbookData> => ({
  ...one,
  id: other.id!,
  sheetOrder: [...one.sheetOrder, ...other.sheetOrder!],
  sheets: { ...one.sheets, ...other.sheets! },
  resources: joinedParts(one.resources, other.resources),
});
