import type { Forgery } from "./kinds";
import { forgeries, type Kind, type Make } from "./makes";

const onEvidence =
  (label: string, column: string, value: string | number): Make =>
  (file) => {
    const xml = file.parts.get(file.part("Evidence"))!;
    const row = new RegExp(`<c r="A(\\d+)"[^>]*><is><t[^>]*>${label.replace(/[[\]()]/g, "\\$&")}`).exec(xml)![1]!;
    if (typeof value === "number") file.value("Evidence", `${column}${row}`, value);
    else file.text("Evidence", `${column}${row}`, value);
  };
const EVIDENCE: readonly Kind[] = [
  ["a figure on Evidence", onEvidence("CU (Christiansen)", "D", 92)],
  ["a limit on Evidence", onEvidence("CU (Christiansen)", "E", "at least 50")],
  ["a definition on Evidence", onEvidence("CU (Christiansen)", "B", "something else")],
  ["the hash", onEvidence("SHA-256", "B", "0".repeat(64))],
  ["the code on Evidence", onEvidence("Code of this copy", "B", "0000 0000 0000 0000")],
  ["the day of the copy in words", onEvidence("Day of the copy", "C", "2020-01-01")],
  ["the version on Evidence", onEvidence("Made with Canfall", "B", "9.9")],
  ["a heading on Evidence", (file) => file.text("Evidence", "A2", "Approved by the authority.")],
  ["a reading on the list alone", onEvidence("Cans_Readings", "D", 41)],
  [
    "a line that takes a figure out of the check",
    (file) => {
      const [sheet, address] = file.place("Used_CU");
      const text = file.parts.get(file.part("Evidence"))!;
      const row = /<c r="A(\d+)"[^>]*><is><t[^>]*>none: all formulas are native ones/.exec(text)![1]!;
      file.onSheet(
        "Evidence",
        new RegExp(`<row r="${row}"[\\s\\S]*?</row>`),
        `<row r="${row}"><c r="A${row}" t="inlineStr"><is><t>${sheet}!${address}</t></is></c><c r="B${row}" t="inlineStr"><is><t>CANFALL.CU.CHRISTIANSEN(Cans_Readings)</t></is></c><c r="D${row}"><v>92</v></c></row>`,
      );
      file.inBook(
        "</definedNames>",
        `<definedName name="Evidence_Formulas">Evidence!$A$${row}:$F$${row}</definedName></definedNames>`,
      );
      file.value(sheet, address, 92);
    },
  ],
  [
    "white text on Evidence",
    (file) =>
      file.look("Evidence", "A3", { font: (font) => font.replace(/(<sz [^>]*\/>)/, '$1<color rgb="FFFFFFFF"/>') }),
  ],
  ["a hidden row on Evidence", (file) => file.onSheet("Evidence", '<row r="3"', '<row hidden="1" r="3"')],
  [
    "text beside Evidence",
    (file) =>
      file.onSheet(
        "Evidence",
        "</sheetData>",
        '<row r="2000"><c r="H2000" t="inlineStr"><is><t>Approved</t></is></c></row></sheetData>',
      ),
  ],
];

/** The sheet Evidence. */
export const EVIDENCE_KINDS: readonly Forgery[] = forgeries(EVIDENCE);
