import { chromium } from "playwright-core";

const browser = await chromium.launch({
  executablePath: "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu"],
});
const page = await browser.newPage({ viewport: { width: 703, height: 1024 } });
await page.emulateMedia({ media: "print" });
for (const path of ["modules/spring-motor/", "modules/hand-crank-sewing-machine/"]) {
  await page.goto(`file:///tmp/print-site/${path}index.html`);
  await page.waitForTimeout(500);
  console.log(
    path,
    await page.evaluate(() => {
      const mm = 25.4 / 96;
      const rows = [...document.querySelectorAll(".sheet > *")].map(
        (e) =>
          (e.className + " " + (e.id || e.querySelector("h2")?.textContent || "")).slice(0, 40) +
          " " +
          Math.round((e as HTMLElement).offsetHeight * mm),
      );
      const sum: Record<string, number> = {};
      for (const s of [
        ".step",
        ".step .needs ul",
        ".step .message",
        ".step .message ul",
        ".step .acts",
        ".step-head > .lines",
        ".step .prose",
        ".step .long",
        ".step .tray",
        ".step .figure",
        ".step .record",
        ".step h3",
        ".marks",
        ".step .afterwards",
        ".step .gate",
      ])
        sum[s] = Math.round(
          [...document.querySelectorAll(s)].reduce(
            (a, e) => a + [...e.getClientRects()].reduce((x, r) => x + r.height, 0),
            0,
          ) *
            mm *
            (s === ".step" ? 2 : 1),
        );
      return { rows: rows.join("\n"), sum };
    }),
  );
}
await browser.close();
