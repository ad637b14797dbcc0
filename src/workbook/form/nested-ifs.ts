/** A text of a formula. */
export const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** The answer beside the first condition that is true, as nested IFs. */
export function nestedIfs(pairs: readonly (readonly [condition: string, answer: string])[], otherwise: string): string {
  return pairs.reduceRight((rest, [condition, answer]) => `IF(${condition},${answer},${rest})`, otherwise);
}
