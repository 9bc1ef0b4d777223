import { chromium } from "playwright-core";

const browser = await chromium.launch({
  executablePath: "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
const page = await browser.newPage();
for (const path of ["modules/spring-motor/", "modules/hand-crank-sewing-machine/"]) {
  await page.goto(`file:///tmp/print-site/${path}index.html`);
  console.log(
    path,
    await page.evaluate(() => {
      var o = {
        w(s: string) {
          return [...document.querySelectorAll(s)]
            .map((e) => (e.textContent ?? "").split(/\s+/).filter(Boolean).length)
            .reduce((a, b) => a + b, 0);
        },
      };
      const out: Record<string, number> = {};
      for (const s of [
        "main",
        ".sheet > .step",
        ".step .needs ul",
        ".step .message",
        ".step .message ul",
        ".step .acts",
        ".step .head .lines, .step-head .lines",
        ".step .prose",
        ".step .long",
        ".step .tray",
        ".step .tray .changed",
        ".step .figure",
        ".step .record",
        ".sheet > :not(.step)",
        ".precedence",
        ".precedence-words",
        ".title-block",
        ".opening",
        ".order-of-work",
      ])
        out[s] = o.w(s);
      for (const g of document.querySelectorAll(".sheet > :not(.step)"))
        out["> " + g.className + " " + (g.querySelector("h2")?.textContent ?? "")] = (
          g.textContent ?? ""
        ).split(/\s+/).length;
      return out;
    }),
  );
}
await browser.close();
