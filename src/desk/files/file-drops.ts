/** How long after the last sign of dragged files they count as gone [ms]; browsers give one every 350 ms at least. */
const GONE_MS = 600;

/**
 * Takes files that are dropped anywhere on the page, but for parts that take them themselves and keep the event; the
 * browser never shows one in place of the page.
 *
 * @param sign Shown while files are dragged over the page
 */
export function fileDrops(sign: HTMLElement, take: (files: readonly File[]) => void): void {
  let gone: ReturnType<typeof setTimeout>;
  const isAsking = () => document.querySelector("dialog[open]") !== null;
  const hide = () => {
    clearTimeout(gone);
    sign.hidden = true;
  };
  addEventListener("dragover", (event) => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = isAsking() ? "none" : "copy";
    hide();
    if (isAsking()) return;
    sign.hidden = false;
    gone = setTimeout(hide, GONE_MS);
  });
  addEventListener("drop", (event) => {
    hide();
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    if (!isAsking() && event.dataTransfer.files.length > 0) take([...event.dataTransfer.files]);
  });
}
