import type { BedVerdict } from "./bed-verdict";

interface Props {
  id: string;
  /** Left out where the throw or the layout of the heads is missing. */
  verdict: BedVerdict | null;
  missing: string;
}

/** What may be wrong with the bed, how sure that is, and what to measure next. */
export function CauseSection({ id, verdict, missing }: Props) {
  return (
    <section aria-labelledby={`${id}-cause`}>
      <h3 id={`${id}-cause`}>What may be wrong</h3>
      {!verdict && <p className="note">{missing}</p>}
      {verdict && (
        <>
          <p role="status">
            <strong>{verdict.sentence}</strong>
          </p>
          <p>Next: {verdict.next}.</p>
          <ul>
            {verdict.likely.map((cause) => (
              <li key={cause}>{cause}</li>
            ))}
          </ul>
          <p className="note">
            From the cans and the layout of the heads alone. Check at the heads before you buy anything.
          </p>
        </>
      )}
    </section>
  );
}
