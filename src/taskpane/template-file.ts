/** A workbook that lies beside the page. */
export async function templateFile(name: "block-audit" | "example-audit"): Promise<Uint8Array> {
  const response = await fetch(`${name}.xlsx`);
  if (!response.ok) throw new Error(`${name}.xlsx did not load (${response.status})`);
  return new Uint8Array(await response.arrayBuffer());
}
