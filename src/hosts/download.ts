const KINDS: Record<string, string> = {
  csv: "text/csv",
  png: "image/png",
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/** Hands a file to the browser's download. */
export function download(file: Uint8Array, name: string): void {
  const type = KINDS[name.slice(name.lastIndexOf(".") + 1).toLowerCase()] ?? "application/octet-stream";
  const address = URL.createObjectURL(new Blob([file as BlobPart], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
