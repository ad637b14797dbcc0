import { toBase64 } from "../base64";
import { inWords } from "./run";

const SLICE_BYTES = 4_194_304;

type Ask<T> = (done: (result: Office.AsyncResult<T>) => void) => void;

const answered = <T>(ask: Ask<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    ask(({ status, value, error }) => {
      if (status === Office.AsyncResultStatus.Failed) reject(new Error(error.message));
      else resolve(value);
    });
  });

function joined(slices: ArrayLike<number>[]): Uint8Array {
  const bytes = new Uint8Array(slices.reduce((sum, { length }) => sum + length, 0));
  let filled = 0;
  for (const slice of slices) {
    bytes.set(slice, filled);
    filled += slice.length;
  }
  return bytes;
}

/** The open workbook as an .xlsx file, with what is not saved yet. */
export async function openFile(): Promise<Uint8Array> {
  if (!Office.context.requirements.isSetSupported("CompressedFile")) {
    throw new Error(
      "This Excel does not hand its workbook over. Use Excel for Microsoft 365 on Windows, Mac or the web",
    );
  }
  const file = await answered<Office.File>((done) =>
    Office.context.document.getFileAsync(Office.FileType.Compressed, { sliceSize: SLICE_BYTES }, done),
  );
  try {
    const slices: ArrayLike<number>[] = [];
    for (let i = 0; i < file.sliceCount; i++) {
      const { data } = await answered<Office.Slice>((done) => file.getSliceAsync(i, done));
      slices.push(data);
    }
    return joined(slices);
  } finally {
    await answered<void>((done) => file.closeAsync(done));
  }
}

export const openWindow = (file: Uint8Array): Promise<void> =>
  Excel.createWorkbook(toBase64(file)).catch((reason: unknown) => {
    throw inWords(reason);
  });

/** Opens a finished workbook in a window of its own. */
export async function deliver(file: Uint8Array, name: string): Promise<string> {
  await openWindow(file);
  return `It was handed to Excel to open in a window of its own: look behind this window, or in your cloud folder. Save it there as ${name}.`;
}

/** Opens a page that lies beside the pane's in the browser, also out of Excel on Windows or a Mac. */
export function openPage(address: string): void {
  const { href } = new URL(address, location.href);
  const { ui, requirements } = Office.context;
  if (requirements.isSetSupported("OpenBrowserWindowApi", "1.1")) ui.openBrowserWindow(href);
  else window.open(href, "_blank", "noopener");
}
