/** What makes and checks share copies, loaded when first used. */
export async function copyTools() {
  const [{ shareCopy }, { checkedFile, registerTable }] = await Promise.all([
    import("../../share/copy/share-copy"),
    import("../../share/register-table"),
  ]);
  return { shareCopy, checkedFile, registerTable };
}
