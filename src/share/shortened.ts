/** A text of at most so many letters, cut between words. */
export function shortened(text: string, most: number): string {
  if (text.length <= most) return text;
  const whole = text.slice(0, most).replace(/\s+\S*$/, "");
  return `${whole} …`;
}
