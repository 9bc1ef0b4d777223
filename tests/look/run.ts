/** `npm run look`: pictures of the main screens of the demo, in `screens/`, for people to look at. Nothing is compared. */
import { mkdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { needChromium } from "../support/chromium.ts";
import { projectDir } from "../support/project.ts";
import { runTool } from "../support/run-command.ts";
import { serveFolder } from "../support/static-server.ts";
import { type Screen, screens } from "./screens.ts";

interface Look {
  readonly name: string;
  readonly options: BrowserContextOptions;
  readonly prepare?: (page: Page) => Promise<unknown>;
}

const at = (width: number, height: number): BrowserContextOptions => ({ viewport: { width, height } });

/** Two hundred per cent at 1440 px: half the width, each pixel doubled. */
const looks: readonly Look[] = [
  { name: "320", options: at(320, 700) },
  { name: "768", options: at(768, 1024) },
  { name: "1440", options: at(1440, 900) },
  { name: "768-dark", options: { ...at(768, 1024), colorScheme: "dark" } },
  { name: "320-dark", options: { ...at(320, 700), colorScheme: "dark" } },
  { name: "1440-dark", options: { ...at(1440, 900), colorScheme: "dark" } },
  { name: "zoom-200", options: { ...at(720, 450), deviceScaleFactor: 2 } },
  { name: "forced-colours", options: { ...at(768, 1024), forcedColors: "active" } },
  {
    name: "right-to-left",
    options: at(768, 1024),
    prepare: (page) => page.evaluate(() => document.documentElement.setAttribute("dir", "rtl")),
  },
];

/** What is asked for on the command line, by parts of the names of screens and looks; all where nothing is. */
const asked = process.argv.slice(2);
const isAsked = (name: string): boolean => asked.length === 0 || asked.some((part) => name.includes(part));

const to = join(projectDir, "screens");
const site = join(projectDir, ".cache", "look");
await rm(to, { recursive: true, force: true });
await mkdir(to, { recursive: true });
const built = await runTool(["build", "--content", join(projectDir, "content"), "--to", site]);
if (built.code !== 0) throw new Error(`${built.stdout}${built.stderr}`);
const server = await serveFolder(site, "/");
const browser = await chromium.launch({
  executablePath: await needChromium(console.log),
  args: ["--no-sandbox", "--disable-gpu"],
});

async function picture(screen: Screen, { name, options, prepare }: Look): Promise<void> {
  const context = await browser.newContext({ reducedMotion: "reduce", ...options });
  const page = await context.newPage();
  await page.goto(server.url + screen.path);
  await prepare?.(page);
  await screen.act?.(page);
  await page.screenshot({ path: join(to, `${screen.name}-${name}.png`), fullPage: screen.isWhole ?? false });
  await context.close();
}

async function print(screen: Screen): Promise<void> {
  const page = await browser.newPage();
  await page.goto(server.url + screen.path);
  await page.pdf({ path: join(to, `${screen.name}.pdf`), preferCSSPageSize: true, format: "A4" });
  await page.close();
}

for (const screen of screens) {
  for (const look of looks) if (isAsked(`${screen.name}-${look.name}`)) await picture(screen, look);
  if (isAsked(`${screen.name}.pdf`)) await print(screen);
}
await browser.close();
await server.close();
console.log(`in ${to}`);
