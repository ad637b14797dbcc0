import { Inflate } from "fflate";
import { InputError } from "../../core/errors";
import { CONTENT_TYPES_SPACE } from "./namespaces";
import { decoded } from "./xml";
import { childrenOf, xmlTree } from "./xml-tree";
import { statedCount, type ZipEntry, zipEntries } from "./zip-entries";
import { broken } from "./zip-list";

const MB = 1e6;
const MOST_MB = 20;
const MOST_UNZIPPED_MB = 200;
const MOST_ENTRIES = 1000;
/** Times that a large part may grow; real sheets stay well under it. */
const MOST_RATIO = 200;
const LARGE_BYTES = MB;
/** So that no single step can unzip more than about 16 MB. */
const STEP_BYTES = 16_384;

const ZIP_START = [0x50, 0x4b, 0x03, 0x04];
const OLD_OR_ENCRYPTED_START = [0xd0, 0xcf, 0x11, 0xe0];
const CONTENT_TYPES = "[Content_Types].xml";
/** The kind of content that the main part of an .xlsx workbook has. */
export const WORKBOOK_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";

const startsWith = (bytes: Uint8Array, start: readonly number[]) => start.every((byte, i) => bytes[i] === byte);
const another = (kind: string) => new InputError("the file", "be an .xlsx workbook", kind);

/** Refuses in plain words whatever is no .xlsx workbook, is broken or encrypted, or would unzip beyond all measure. */
export function checkedZip(bytes: Uint8Array): void {
  unzipped(bytes);
}

/**
 * The parts of an .xlsx workbook from anywhere.
 *
 * @param bytes The file, at most 20 MB
 * @returns Each part by its name; at most 1,000, at most 200 MB together
 * @throws InputError if the file is no .xlsx workbook, or is broken, encrypted or larger than that, packed or unpacked
 */
export function unzipped(bytes: Uint8Array): Map<string, Uint8Array> {
  if (bytes.length > MOST_MB * MB) throw new InputError("the file", `have at most ${MOST_MB} MB`, inMb(bytes.length));
  if (startsWith(bytes, OLD_OR_ENCRYPTED_START)) throw another("an older or a locked format");
  if (!startsWith(bytes, ZIP_START)) throw another(bytes.length === 0 ? "an empty file" : "a file of another kind");
  const count = statedCount(bytes);
  if (count > MOST_ENTRIES) throw new InputError("the file", `hold at most ${MOST_ENTRIES} parts`, count);
  const entries = zipEntries(bytes);
  limited(entries);
  const parts = new Map(entries.map((entry) => [entry.name, contentOf(entry)]));
  const types = parts.get(CONTENT_TYPES);
  if (!types || !holdsWorkbook(types)) throw another("an archive of another kind");
  return parts;
}

function holdsWorkbook(types: Uint8Array): boolean {
  const root = xmlTree(decoded(types));
  return ["Override", "Default"].some((name) =>
    childrenOf(root, (space) => space === CONTENT_TYPES_SPACE, name).some(
      ({ given }) => given.get("ContentType") === WORKBOOK_TYPE,
    ),
  );
}

const inMb = (size: number): number => Math.round((10 * size) / MB) / 10;

function limited(entries: readonly ZipEntry[]): void {
  const total = entries.reduce((sum, { size }) => sum + size, 0);
  if (total > MOST_UNZIPPED_MB * MB) {
    throw new InputError("the file", `unzip to at most ${MOST_UNZIPPED_MB} MB`, inMb(total));
  }
  for (const { name, size, data } of entries) {
    if (size > LARGE_BYTES && size > MOST_RATIO * data.length) {
      const rule = `hold no part that unzips to more than ${MOST_RATIO} times its size`;
      throw new InputError("the file", rule, Math.round(size / data.length), { place: name });
    }
  }
}

/** A part's real content, which may not be longer or shorter than stated. */
function contentOf(entry: ZipEntry): Uint8Array {
  const content = entry.deflated ? inflated(entry) : entry.data;
  if (content.length !== entry.size) throw broken("a part of another size than stated");
  if (crcOf(content) !== entry.crc) throw broken("a damaged part");
  return content;
}

function inflated({ data, size }: ZipEntry): Uint8Array {
  const content = new Uint8Array(size);
  let filled = 0;
  const inflate = new Inflate((chunk) => {
    if (filled + chunk.length > size) throw broken("a part of another size than stated");
    content.set(chunk, filled);
    filled += chunk.length;
  });
  try {
    for (let at = 0; at === 0 || at < data.length; at += STEP_BYTES) {
      inflate.push(data.subarray(at, at + STEP_BYTES), at + STEP_BYTES >= data.length);
    }
  } catch (error) {
    throw error instanceof InputError ? error : broken("a damaged part");
  }
  return content.subarray(0, filled);
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

function crcOf(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (let i = 0; i < bytes.length; i += 1) {
    crc = (crc >>> 8) ^ (CRC_TABLE[(crc ^ (bytes[i] as number)) & 0xff] as number);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
