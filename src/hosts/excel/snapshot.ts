import type { Area } from "../../cells/area";
import { boxAddress, parseArea } from "../../cells/box";
import { allWanted, type Seen, Snapshot, type Wanted } from "../snapshot";
import { type Asked, readAreas } from "./read";

const PLACE = "rowIndex,columnIndex,rowCount,columnCount";
/** Excel's codes for a selection that is not one rectangle of cells. */
const NO_CELLS = ["InvalidSelection", "InvalidReference", "ItemNotFound", "InvalidOperation"];

interface Found {
  facts: Pick<Seen, "book" | "sheets" | "calculating">;
  selection: Area | null;
  /** Areas behind all names of the workbook, by their names in small letters. */
  names: ReadonlyMap<string, Area>;
}

const edges = ({ rowIndex: top, columnIndex: left, rowCount, columnCount }: Excel.Range) => ({
  top,
  left,
  bottom: top + rowCount,
  right: left + columnCount,
});

/** The part of the selection that lies within the used part of its sheet; its first cell where none does. */
function cut(sheet: string, selected: Excel.Range, used: Excel.Range): Area {
  const all = edges(selected);
  const within = used.isNullObject ? all : edges(used);
  const [top, left] = [Math.max(all.top, within.top), Math.max(all.left, within.left)];
  const rows = Math.min(all.bottom, within.bottom) - top;
  const columns = Math.min(all.right, within.right) - left;
  const box =
    used.isNullObject || rows < 1 || columns < 1
      ? { row: all.top + 1, column: all.left + 1, rows: 1, columns: 1 }
      : { row: top + 1, column: left + 1, rows, columns };
  return { sheet, address: boxAddress(box) };
}

async function look(context: Excel.RequestContext, withSelection: boolean): Promise<Found> {
  const { workbook } = context;
  const sheets = workbook.worksheets.load("items/name");
  const names = workbook.names.load("items/name,items/formula");
  const application = workbook.application.load("calculationState");
  const selected = withSelection ? workbook.getSelectedRange().load(`${PLACE},worksheet/name`).untrack() : null;
  const used = selected?.worksheet.getUsedRangeOrNullObject(true).load(PLACE).untrack();
  await context.sync();
  return {
    facts: {
      book: "the workbook that the pane belongs to",
      sheets: sheets.items.map(({ name }) => name),
      calculating: application.calculationState !== "Done",
    },
    selection: selected && used ? cut(selected.worksheet.name, selected, used) : null,
    names: new Map(
      names.items.flatMap(({ name, formula }): [string, Area][] => {
        const area = parseArea(String(formula).replace(/^=/, "").replaceAll("$", ""), "");
        return area?.sheet ? [[name.toLowerCase(), area]] : [];
      }),
    ),
  };
}

async function lookAround(context: Excel.RequestContext): Promise<Found> {
  try {
    return await look(context, true);
  } catch (refusal) {
    if (!(refusal instanceof OfficeExtension.Error) || !NO_CELLS.includes(refusal.code)) throw refusal;
    return look(context, false);
  }
}

/**
 * The workbook at one moment: one request looks around, the next one reads; a spill takes one more. Where somebody else
 * took away a sheet between them, it looks again.
 */
export async function snapshot(context: Excel.RequestContext, wanted: Wanted, again = true): Promise<Snapshot> {
  const { names, areas, typed } = allWanted([wanted]);
  const found = await lookAround(context);
  const spelled = (sheet: string) => found.facts.sheets.find((one) => one.toLowerCase() === sheet.toLowerCase());
  const asked: (Asked & { place: string | Area | null })[] = [];
  const missing: (string | Area)[] = [];
  if (found.selection) asked.push({ place: null, area: found.selection, typed: false });
  for (const place of [...areas, ...names]) {
    const area = typeof place === "string" ? found.names.get(place.toLowerCase()) : place;
    const sheet = area && spelled(area.sheet);
    if (sheet === undefined) missing.push(place);
    else asked.push({ place, area: { sheet, address: area!.address }, typed: typed(place) });
  }
  const filled = await readAreas(context, asked).catch((refusal: unknown) => {
    if (!again || !(refusal instanceof OfficeExtension.Error) || refusal.code !== "ItemNotFound") throw refusal;
    return null;
  });
  if (filled === null) return snapshot(context, wanted, false);
  return new Snapshot({
    ...found.facts,
    selection: found.selection && filled[0]!,
    held: [
      ...asked.flatMap(({ place }, index) => (place === null ? [] : [[place, filled[index]!] as const])),
      ...missing.map((place) => [place, null] as const),
    ],
  });
}
