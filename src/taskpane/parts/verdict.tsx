const SYMBOLS: [string, string][] = [
  ["within", "✓"],
  ["outside", "✗"],
  ["too close", "≈"],
  ["too few", "?"],
];

/** The symbol of a verdict; "" of other words. */
export const symbolOf = (words: string): string => SYMBOLS.find(([start]) => words.startsWith(start))?.[1] ?? "";

/** A verdict with its symbol before the words. */
export function Verdict({ words }: { words: string }) {
  return (
    <span className="verdict">
      <span aria-hidden="true">{symbolOf(words)} </span>
      {words}
    </span>
  );
}
