import { tokenize } from "@borgar/fx/xlsx";

/** Names that mean something on one sheet only, under the names that the grid, which knows no such, has for them. */
export class OwnNames {
  private readonly inGrid = new Map<string, string>();
  private readonly names = new Set<string>();
  private readonly keys = new Map<string, string>();

  constructor(
    names: readonly { key: string; name: string; inGrid: string }[],
    sheets: readonly { key: string; name: string }[],
  ) {
    for (const { key, name, inGrid } of names) {
      this.inGrid.set(`${key} ${name.toLowerCase()}`, inGrid);
      this.names.add(name.toLowerCase());
    }
    for (const { key, name } of sheets) this.keys.set(name.toLowerCase(), key);
  }

  /** A formula of a sheet with the grid's names for such names. */
  translated(formula: string, key: string): string {
    const small = formula.toLowerCase();
    if (![...this.names].some((name) => small.includes(name))) return formula;
    const tokens = tokenize(formula, { withLocation: false, negativeNumbers: false });
    return tokens.map(({ type, value }) => (type === "range_named" ? this.of(value, key) : value)).join("");
  }

  private of(text: string, asking: string): string {
    const end = text.lastIndexOf("!");
    const sheet = text.slice(0, Math.max(0, end)).replace(/^'|'$/g, "").replaceAll("''", "'");
    const key = end < 0 ? asking : this.keys.get(sheet.toLowerCase());
    return this.inGrid.get(`${key} ${text.slice(end + 1).toLowerCase()}`) ?? text;
  }
}

/** The grid's name for a name of the sheet `key`. */
export const nameInGrid = (name: string, key: string): string => `${name}_${key.replaceAll("-", "_")}`;
