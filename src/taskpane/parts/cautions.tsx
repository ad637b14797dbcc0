import { useId } from "react";

/** What can hurt someone at what this step is for. */
export function Cautions({ of, title = "Take care" }: { of: readonly string[]; title?: string }) {
  const id = useId();
  return (
    <section className="cautions" aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      <ul>
        {of.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </section>
  );
}
