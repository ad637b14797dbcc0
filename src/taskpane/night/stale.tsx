/** Whether two things that the sheets state are the same. */
export const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Says that what is here belongs to a Program, or something else, that has changed. */
export function Stale({ what = "The Program", again }: { what?: string; again: string }) {
  return (
    <p role="status" className="problem">
      {what} was changed since: {again}
    </p>
  );
}
