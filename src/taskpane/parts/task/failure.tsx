/** Why something could not be shown. */
export function Failure({ words }: { words: string }) {
  if (!words) return null;
  return (
    <p role="alert" className="problem">
      {words}
    </p>
  );
}
