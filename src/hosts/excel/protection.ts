/** Works on a sheet; where its protection refuses, lifts it for the work and puts the same protection back. */
export async function onSheet(
  context: Excel.RequestContext,
  name: string,
  work: (sheet: Excel.Worksheet) => Promise<void> | void,
): Promise<void> {
  const sheet = context.workbook.worksheets.getItem(name);
  const attempt = async () => {
    await work(sheet);
    await context.sync();
  };
  try {
    await attempt();
  } catch (refusal) {
    const protection = sheet.protection.load("protected,options");
    await context.sync();
    if (!protection.protected) throw refusal;
    const { options } = protection;
    protection.unprotect();
    await context.sync().catch((cause: unknown) => {
      throw new Error(`The sheet "${name}" has a password. Take its protection off, and start again`, { cause });
    });
    try {
      await attempt();
    } finally {
      protection.protect(options);
      await context.sync();
    }
  }
}
