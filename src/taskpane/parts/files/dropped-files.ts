const isWorkbook = (name: string): boolean => /\.xlsx$/i.test(name) && !name.startsWith("~$");

const fileOf = (entry: FileSystemFileEntry): Promise<File> => new Promise((done, fail) => entry.file(done, fail));

/** The reader of a folder hands out a part at a time. */
async function inFolder(folder: FileSystemDirectoryEntry): Promise<FileSystemEntry[]> {
  const reader = folder.createReader();
  const all: FileSystemEntry[] = [];
  for (;;) {
    const part = await new Promise<FileSystemEntry[]>((done, fail) => reader.readEntries(done, fail));
    if (part.length === 0) return all;
    all.push(...part);
  }
}

async function filesOf(entry: FileSystemEntry): Promise<File[]> {
  if (entry.isFile) return [await fileOf(entry as FileSystemFileEntry)];
  const within = await inFolder(entry as FileSystemDirectoryEntry);
  return (await Promise.all(within.map(filesOf))).flat();
}

/** The workbooks among files, in the order of their names. */
export const workbooksAmong = (files: readonly File[]): File[] =>
  files.filter(({ name }) => isWorkbook(name)).sort((one, other) => one.name.localeCompare(other.name));

/** All files that were dropped, those inside dropped folders too. */
export async function droppedFiles({ items, files }: DataTransfer): Promise<File[]> {
  const plain = [...files];
  const entries = [...items].map((item) => item.webkitGetAsEntry?.()).filter((entry) => entry != null);
  if (entries.length === 0) return plain;
  return (await Promise.all(entries.map(filesOf))).flat();
}
