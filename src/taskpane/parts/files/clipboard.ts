import type { Stated } from "../../../cells/stated";
import { harmless } from "../../../share/csv";

const plain = (value: Stated): string => String(harmless(value) ?? "").replace(/[\t\r\n]+/g, " ");
const escaped = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** A table as text with tabs, and as HTML: a spreadsheet takes either, a letter the second. */
export function tableForms(rows: readonly (readonly Stated[])[]): { text: string; html: string } {
  const [head = [], ...body] = rows.map((row) => row.map(plain));
  const line = (cell: "th" | "td") => (row: string[]) =>
    `<tr>${row.map((text) => `<${cell}>${escaped(text)}</${cell}>`).join("")}</tr>`;
  return {
    text: [head, ...body].map((row) => row.join("\t")).join("\r\n"),
    html: `<table><thead>${line("th")(head)}</thead><tbody>${body.map(line("td")).join("")}</tbody></table>`,
  };
}

const blob = (type: string, text: string) => new Blob([text], { type });

/** The older way, for panes that may not reach the clipboard otherwise. */
function copiedByEvent(forms: { text: string; html: string }): boolean {
  let given = false;
  const give = (event: ClipboardEvent) => {
    event.clipboardData?.setData("text/plain", forms.text);
    event.clipboardData?.setData("text/html", forms.html);
    event.preventDefault();
    given = true;
  };
  document.addEventListener("copy", give);
  const done = document.execCommand("copy");
  document.removeEventListener("copy", give);
  return done && given;
}

/** Copies a table as text and as HTML. */
export async function copyTable(rows: readonly (readonly Stated[])[]): Promise<void> {
  const forms = tableForms(rows);
  try {
    const item = { "text/plain": blob("text/plain", forms.text), "text/html": blob("text/html", forms.html) };
    await navigator.clipboard.write([new ClipboardItem(item)]);
  } catch (cause) {
    if (!copiedByEvent(forms))
      throw new Error("This pane may not copy. Put the table on a new sheet instead", { cause });
  }
}

/** Copies a picture that may still be being drawn: Safari takes only what was promised while the button was pressed. */
export async function copyPicture(png: Promise<Uint8Array>): Promise<void> {
  const drawn = png.then((bytes) => new Blob([bytes as BlobPart], { type: "image/png" }));
  try {
    await navigator.clipboard.write([new ClipboardItem({ "image/png": drawn })]);
  } catch (cause) {
    await png;
    throw new Error("This pane may not copy a picture. Place it at the selected cell, and copy it there", { cause });
  }
}
