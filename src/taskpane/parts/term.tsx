import { useId, useState } from "react";
import { meaningOf, type TermName } from "../../core/figures/glossary";

/** A term that says what it means: under the pointer, or below it once it is pressed. */
export function Term({ of, shown = of }: { of: TermName; shown?: string }) {
  const [open, setOpen] = useState(false);
  const id = useId();
  return (
    <>
      <button
        type="button"
        className="term"
        title={meaningOf(of)}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={() => setOpen(!open)}
      >
        {shown}
      </button>
      {open && (
        <span id={id} className="detail">
          {meaningOf(of)}
        </span>
      )}
    </>
  );
}
