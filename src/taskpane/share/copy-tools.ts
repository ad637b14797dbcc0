import { pause } from "../../hosts/pause";

/** What makes and checks share copies, loaded when first used. */
export async function copyTools() {
  const [{ shareCopy }, { checkedFile, registerTable }] = await Promise.all([
    import("../../share/copy/share-copy"),
    import("../../share/register-table"),
  ]);
  return { shareCopy, checkedFile, registerTable };
}

/** How long a step is shown before what it needs is made ready, and between parts of that [ms]. */
const SHOWN_MS = 300;
const REST_MS = 20;

/** Loads the tools and what they look up while a person looks for a file. */
export async function makeReady(stopped: () => boolean): Promise<void> {
  await pause(SHOWN_MS);
  if (stopped()) return;
  await copyTools();
  const { readied } = await import("../../share/check/ready");
  if (!stopped()) await readied(() => pause(REST_MS));
}
