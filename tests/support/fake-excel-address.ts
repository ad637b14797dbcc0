export const MOST_ROWS = 1_048_576;
export const MOST_COLUMNS = 16_384;

export interface Rectangle {
  row: number;
  column: number;
  rows: number;
  columns: number;
}

const letters = (column: number): string =>
  (column >= 26 ? letters(Math.floor(column / 26) - 1) : "") + String.fromCharCode(65 + (column % 26));

const columnOf = (name: string): number =>
  [...name].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

export function rectangle(address: string): Rectangle {
  const [, left, top, right = left, bottom = top] = /^([A-Z]+)(\d*)(?::([A-Z]+)(\d*))?$/.exec(
    address.replaceAll("$", ""),
  )!;
  const row = top ? Number(top) - 1 : 0;
  const column = columnOf(left!);
  return { row, column, rows: (bottom ? Number(bottom) : MOST_ROWS) - row, columns: columnOf(right!) + 1 - column };
}

export function addressOf({ row, column, rows, columns }: Rectangle): string {
  const [left, right] = [letters(column), letters(column + columns - 1)];
  if (rows === MOST_ROWS) return `${left}:${right}`;
  const first = `${left}${row + 1}`;
  return rows * columns === 1 ? first : `${first}:${right}${row + rows}`;
}
