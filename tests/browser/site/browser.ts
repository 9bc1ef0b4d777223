/** One Chromium for a test file, and pages in it that notice what must not happen. */
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, inject } from "vitest";

const args = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // A name that is not this machine's own: http there is plain http, as on a workshop's network.
  "--host-resolver-rules=MAP workshop.test 127.0.0.1",
];

export interface Visit {
  readonly page: Page;
  /** Everything that went wrong since the page was opened, in words. */
  readonly troubles: readonly string[];
}

export interface Visitor {
  /** A page of a browser that was never here before, at an address below the site's. */
  open(path: string, options?: BrowserContextOptions): Promise<Visit>;
}

/**
 * Call it once in a test file. Pages are closed with the browser when the file's tests are done. A site that a test builds is known
 * only later. Where `keepsSites` is set, the browser can keep sites for use without a network.
 */
export function withBrowser(
  site: string | (() => string) = inject("siteUrl"),
  { keepsSites = false }: { keepsSites?: boolean } = {},
): Visitor {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: inject("chromium"), args });
  });
  afterAll(async () => {
    await browser?.close();
  });
  return {
    async open(path, options) {
      const context = await browser!.newContext({ viewport: { width: 1280, height: 900 }, ...options });
      // Generous, for machines that have much else to do.
      context.setDefaultTimeout(30_000);
      context.setDefaultNavigationTimeout(60_000);
      // Each visitor is a new one, and would fetch the whole site to keep it.
      if (!keepsSites)
        await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, "serviceWorker"));
      const page = await context.newPage();
      const base = typeof site === "string" ? site : site();
      const troubles = watchFor(page, base);
      const ready = options?.javaScriptEnabled === false ? async () => {} : () => scriptHasBegun(page);
      const reload = page.reload.bind(page);
      page.reload = async (how) => {
        const response = await reload(how);
        await ready();
        return response;
      };
      await page.goto(new URL(path, base).href);
      await ready();
      return { page, troubles };
    },
  };
}

/** What a page keeps is read before its script begins, which takes a moment. */
async function scriptHasBegun(page: Page): Promise<void> {
  const notes = page.locator(".needs-script");
  for (const note of await notes.all()) await note.waitFor({ state: "detached" });
}

/** Errors of scripts, complaints of the console, requests that fail or lead away from `base`. */
function watchFor(page: Page, base: string): string[] {
  const troubles: string[] = [];
  page.on("pageerror", (error) => troubles.push(`error: ${error.message}`));
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) troubles.push(`console: ${message.text()}`);
  });
  page.on("requestfailed", (request) => {
    // What a page has still asked for when it is left is given up, not failed.
    if (request.failure()?.errorText === "net::ERR_ABORTED") return;
    troubles.push(`failed: ${request.url()} ${request.failure()?.errorText}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) troubles.push(`${response.status()}: ${response.url()}`);
  });
  page.on("request", (request) => {
    if (!request.url().startsWith(base) && !request.url().startsWith("data:"))
      troubles.push(`elsewhere: ${request.url()}`);
  });
  return troubles;
}
