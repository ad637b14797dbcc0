/** A workbook that lies beside the page. */
export type TemplateName = "block-audit" | "example-audit" | "nursery-plan" | "example-nursery";

export async function templateFile(name: TemplateName): Promise<Uint8Array> {
  const response = await fetch(`${name}.xlsx`);
  if (!response.ok) throw new Error(`${name}.xlsx did not load (${response.status})`);
  return new Uint8Array(await response.arrayBuffer());
}
