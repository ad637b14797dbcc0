import type { Page } from "playwright-core";

/** Opens a step of the pane, in whichever group it is. */
export async function openStep(page: Page, title: string): Promise<void> {
  const pane = page.locator("#pane");
  const tab = pane.getByRole("tab", { name: title, exact: true });
  await pane.getByRole("tab").first().waitFor();
  for (const group of await pane.locator(".groups button").all()) {
    if ((await tab.count()) > 0) break;
    await group.click();
  }
  await tab.click();
}
