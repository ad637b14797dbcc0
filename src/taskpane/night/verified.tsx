/** What the separate check of every rule says; marked as a success only where the night is `whole`. */
export function Verified({ broken, fits, whole }: { broken: string[]; fits: boolean; whole: boolean }) {
  if (broken.length === 0) {
    const mark = whole ? "✓ " : "";
    return <p>{mark}Checked by separate code: every pulse, rest, window, pair, flow and litre keeps its rule.</p>;
  }
  return (
    <details open={fits}>
      <summary>
        Checked by separate code: {broken.length} {broken.length === 1 ? "rule is" : "rules are"} broken
      </summary>
      <ul>
        {broken.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </details>
  );
}
