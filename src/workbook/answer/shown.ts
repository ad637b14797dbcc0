/** A figure in a sentence: three digits. */
export const shown = (value: number): string => String(Number(value.toPrecision(3)));
