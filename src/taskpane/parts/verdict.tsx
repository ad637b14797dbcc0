const SYMBOLS: [string, string][] = [
  ["within", "✓"],
  ["outside", "✗"],
  ["too close", "≈"],
  ["too few", "?"],
];

/** A verdict with its symbol before the words. */
export function Verdict({ words }: { words: string }) {
  const symbol = SYMBOLS.find(([start]) => words.startsWith(start))?.[1] ?? "";
  return (
    <span className="verdict">
      <span aria-hidden="true">{symbol} </span>
      {words}
    </span>
  );
}
