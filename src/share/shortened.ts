/** A text on one line of at most so many letters, cut between words. */
export function shortened(given: string, most: number): string {
  const text = given.replace(/\r?\n/g, " / ");
  if (text.length <= most) return text;
  const whole = text.slice(0, most).replace(/\s+\S*$/, "");
  return `${whole} …`;
}
