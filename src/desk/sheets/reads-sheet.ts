const TEXTS = /"[^"]*"/g;

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** What a formula can hold that speaks of a sheet: `Sheet!` and `'Sheet'!`, and names that lead there. */
const speaking = (sheet: string, names: readonly string[]): RegExp => {
  const quoted = `'${escaped(sheet.replaceAll("'", "''"))}'!`;
  const bare = `(?<![\\w.'])${escaped(sheet)}!`;
  const named = names.length === 0 ? [] : [`(?<![\\w.])(?:${names.map(escaped).join("|")})(?![\\w.(])`];
  return new RegExp([quoted, bare, ...named].join("|"), "i");
};

/** Tells formulas that read a sheet, by its name or by names that lead there through other names too. */
export function readsSheet(
  sheet: string,
  names: readonly { name: string; reference: string }[],
): (formula: string) => boolean {
  let leading: string[] = [];
  for (;;) {
    const pattern = speaking(sheet, leading);
    const reads = (formula: string) => pattern.test(formula.replace(TEXTS, ""));
    const found = names.filter(({ reference }) => reads(reference)).map(({ name }) => name);
    if (found.length === leading.length) return reads;
    leading = found;
  }
}
