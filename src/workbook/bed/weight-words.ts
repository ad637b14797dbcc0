/** The weight of a cause in words: no fit is certain. */
export const weightWords = (weight: number): string => (weight > 99 ? "over 99 %" : `${weight.toFixed(0)} %`);
