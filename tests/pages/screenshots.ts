// `npm run screenshots [-- FOLDER]`: pictures of a page of every kind of the sample site as it
// stands in out/, at three widths, light and dark, and on paper. They are to be looked at, not to
// be compared: letters are drawn differently on every machine. Names of kinds after the folder
// take only those.

import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { launchChromium } from "../support/chromium.ts";
import { demoSite, hostSite, pageKinds } from "../support/demo-site.ts";

const [folder = "out/site-demo/screenshots", ...only] = process.argv.slice(2);
const widths = [360, 768, 1280];
const schemes = ["light", "dark"] as const;

await mkdir(folder, { recursive: true });
const host = await hostSite(demoSite);
const browser = await launchChromium();
let written = 0;
for (const [kind, at] of Object.entries(pageKinds)) {
  if (only.length > 0 && !only.includes(kind)) continue;
  const name = kind.replaceAll(" ", "-");
  for (const colorScheme of schemes) {
    for (const width of widths) {
      const context = await browser.newContext({ colorScheme, viewport: { width, height: 900 } });
      const page = await context.newPage();
      await page.goto(host.address + at, { waitUntil: "networkidle" });
      // What is loaded when it is scrolled to has to be there on a picture of the whole.
      await page.evaluate(async () => {
        await Promise.all(
          [...document.images].map((image) => {
            image.loading = "eager";
            return image.decode().catch(() => undefined);
          }),
        );
      });
      await page.screenshot({
        path: join(folder, `${name}-${width}-${colorScheme}.png`),
        fullPage: true,
      });
      written += 1;
      if (colorScheme === "light" && width === 1280) {
        await page.emulateMedia({ media: "print" });
        await page.pdf({
          path: join(folder, `${name}.pdf`),
          format: "A4",
          printBackground: true,
          preferCSSPageSize: true,
        });
      }
      await context.close();
    }
  }
}
await browser.close();
host.close();
process.stdout.write(`${written} pictures in ${folder}\n`);
