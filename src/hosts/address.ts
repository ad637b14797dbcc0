/** The address without its sheet and without `$`: `'Bed 7'!$A$1:$B$2` becomes `A1:B2`. */
export function plainAddress(address: string): string {
  return address.slice(address.lastIndexOf("!") + 1).replaceAll("$", "");
}
