import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { buildWorkbook } from "../../src/workbook/form/build";
import { checkedZip, unzipped } from "../../src/xlsx/parts/safe-file";

const TYPES = strToU8(
  '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Override ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/></Types>',
);
const zip = (parts: Record<string, Uint8Array>) => zipSync({ "[Content_Types].xml": TYPES, ...parts });

/** Overwrites four bytes wherever a pattern of four bytes is. */
function patched(bytes: Uint8Array, from: number, to: number): Uint8Array {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  for (let at = 0; at + 4 <= copy.length; at += 1) {
    if (view.getUint32(at, true) === from) view.setUint32(at, to, true);
  }
  return copy;
}

/** Sets a 16-bit field of the first entry in the archive's list. */
function listed(bytes: Uint8Array, field: number, value: number): Uint8Array {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  let at = 0;
  while (view.getUint32(at, true) !== 0x02014b50) at += 1;
  view.setUint16(at + field, value, true);
  return copy;
}

describe("a file from outside", () => {
  it("passes when it is a workbook, with all its parts", async () => {
    const file = await buildWorkbook([{ name: "Cans", widths: [10], cells: [] }], {});
    expect(() => checkedZip(file)).not.toThrow();
    expect([...unzipped(file).keys()]).toContain("xl/workbook.xml");
  });

  it.each([
    ["an empty file", new Uint8Array(), 'the file must be an .xlsx workbook, got "an empty file"'],
    [
      "a picture",
      Uint8Array.of(0x89, 0x50, 0x4e, 0x47),
      'the file must be an .xlsx workbook, got "a file of another kind"',
    ],
    [
      "a workbook with a password",
      Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1),
      'the file must be an .xlsx workbook, got "an older or a locked format"',
    ],
    [
      "another archive",
      zipSync({ "a.txt": strToU8("hello") }),
      'the file must be an .xlsx workbook, got "an archive of another kind"',
    ],
    ["over 20 MB", new Uint8Array(20_100_000), "the file must have at most 20 MB, got 20.1"],
    [
      "over 1,000 parts",
      zip(Object.fromEntries(Array.from({ length: 1000 }, (_, i) => [`${i}`, new Uint8Array()]))),
      "the file must hold at most 1000 parts, got 1001",
    ],
    [
      "a part of zeros, which would grow about 1,000 times",
      zip({ "xl/a.xml": new Uint8Array(2_000_000) }),
      /^the file must hold no part that unzips to more than 200 times its size, got \d+ in xl\/a\.xml$/,
    ],
    [
      "parts of over 200 MB together",
      patched(zip({ "xl/a.xml": new Uint8Array(100) }), 100, 250_000_000),
      "the file must unzip to at most 200 MB, got 250",
    ],
    [
      "a part that is larger than stated",
      patched(zip({ "xl/a.xml": new Uint8Array(2_000_000) }), 2_000_000, 20_000),
      'the file must be an unbroken .xlsx workbook, got "a part of another size than stated"',
    ],
    [
      "a part that is smaller than stated",
      patched(zip({ "xl/a.xml": new Uint8Array(2_000) }), 2_000, 20_000),
      'the file must be an unbroken .xlsx workbook, got "a part of another size than stated"',
    ],
    ["an encrypted part", listed(zip({}), 8, 1), 'the file must have no password, got "[Content_Types].xml"'],
    [
      "a part packed in an unknown way",
      listed(zip({}), 10, 93),
      'the file must be an unbroken .xlsx workbook, got "a part packed in an unknown way"',
    ],
    [
      "a part of whose packing its own header says something else",
      listed(zip({}), 10, 0),
      'the file must be an unbroken .xlsx workbook, got "a part that is packed in two ways"',
    ],
    [
      "a file cut off",
      zip({ "xl/a.xml": strToU8("hello") }).slice(0, -30),
      'the file must be an unbroken .xlsx workbook, got "an archive without an end"',
    ],
    [
      "two parts of one name",
      zip({ "xl/a.xml": strToU8("1"), "XL/A.XML": strToU8("2") }),
      'the file must be an unbroken .xlsx workbook, got "two parts of one name"',
    ],
  ])("is refused in plain words: %s", (_, bytes, message) => {
    expect(() => checkedZip(bytes)).toThrow(message);
  });

  it("is refused when a single byte of a part has changed", () => {
    const file = zipSync({ "[Content_Types].xml": [TYPES, { level: 0 }] });
    file[60] = (file[60] as number) ^ 1;
    expect(() => checkedZip(file)).toThrow('the file must be an unbroken .xlsx workbook, got "a damaged part"');
  });
});
