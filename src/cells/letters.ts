/** The number of a column; A is 1. */
export function columnNumber(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
}

/** The letters of a column; 1 is A. */
export function columnLetters(column: number): string {
  const rest = Math.floor((column - 1) / 26);
  return `${rest > 0 ? columnLetters(rest) : ""}${String.fromCharCode(65 + ((column - 1) % 26))}`;
}

/** The address without its sheet and without `$`: `'Bed 7'!$A$1:$B$2` becomes `A1:B2`. */
export function plainAddress(address: string): string {
  return address.slice(address.lastIndexOf("!") + 1).replaceAll("$", "");
}
