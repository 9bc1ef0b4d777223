import { chromium } from "playwright-core";

const [format, ...paths] = process.argv.slice(2);
const browser = await chromium.launch({
  executablePath: "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
const page = await browser.newPage();
for (const path of paths) {
  await page.goto(`file:///tmp/print-site/${path}index.html`);
  await page.waitForTimeout(300);
  const name = path.replaceAll("/", "_") || "home";
  const pdf = await page.pdf({ path: `/tmp/prints/${format}-${name}.pdf`, format, preferCSSPageSize: false });
  console.log(path, pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length);
}
await browser.close();
