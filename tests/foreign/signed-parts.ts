import { strFromU8, strToU8 } from "fflate";
import { foreignParts } from "./foreign-parts";

const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";
const relation = (id: string, kind: string, target: string) =>
  `<Relationship Id="${id}" Type="${PACKAGE}/digital-signature/${kind}" Target="${target}"/></Relationships>`;

/** The workbook with a digital signature. */
export function signedParts(): Record<string, Uint8Array> {
  const parts = foreignParts();
  const links = strFromU8(parts["_rels/.rels"]!);
  const origin = relation("rId90", "origin", "_xmlsignatures/origin.sigs");
  return {
    ...parts,
    "_rels/.rels": strToU8(links.replace("</Relationships>", origin)),
    "_xmlsignatures/origin.sigs": new Uint8Array(),
    "_xmlsignatures/_rels/origin.sigs.rels": strToU8(
      `<Relationships xmlns="${PACKAGE}">${relation("rId1", "signature", "sig1.xml")}`,
    ),
    "_xmlsignatures/sig1.xml": strToU8('<Signature xmlns="http://www.w3.org/2000/09/xmldsig#"/>'),
  };
}
