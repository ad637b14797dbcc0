import type { BedReading } from "./bed/use-bed-reading";

interface Props {
  id: string;
  reading: BedReading;
  /** What has to be filled in first; "" for nothing. */
  lack: string;
}

/** What may be wrong with the bed, how sure that is, and what to measure next. */
export function CauseSection({ id, reading, lack }: Props) {
  const { cause, problem, running } = reading;
  return (
    <section aria-labelledby={`${id}-cause`}>
      <h3 id={`${id}-cause`}>What may be wrong</h3>
      {(lack || problem) && <p className="note">{lack || problem}</p>}
      {running && !cause && <p className="note">Reading the bed …</p>}
      {cause && (
        <>
          <ul>
            {cause.verdict.likely.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          <p className="note">
            {cause.verdict.measured
              ? `From the cans, the places of the heads and what was measured: ${cause.verdict.measured}.`
              : "From the cans and the places of the heads alone."}{" "}
            Check at the heads before you buy anything.
          </p>
        </>
      )}
    </section>
  );
}
