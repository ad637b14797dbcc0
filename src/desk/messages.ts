import type { Host } from "../hosts/host";

/** Shows under the grid what is wrong in the selected cell. */
export async function showMessages(host: Host, line: HTMLElement): Promise<void> {
  let newest = 0;
  const show = async () => {
    const asked = ++newest;
    const { sheet, address } = await host.selection();
    const first = address.split(":")[0]!;
    const [[cell = null] = []] = await host.read({ sheet, address: first });
    if (asked !== newest) return;
    const wrong = cell !== null && typeof cell === "object" ? cell : null;
    line.textContent = wrong ? [`${first} shows ${wrong.error}`, wrong.message].filter(Boolean).join(": ") : "";
  };
  await host.watch(() => void show());
  await show();
}
