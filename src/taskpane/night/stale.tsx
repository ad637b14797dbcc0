/** Whether two things that the sheets state are the same. */
export const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Says that what stands here belongs to a Program that has changed. */
export function Stale({ again }: { again: string }) {
  return (
    <p role="status" className="problem">
      The Program was changed since: {again}
    </p>
  );
}
