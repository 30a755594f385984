import { createServer } from "node:net";
import lighthouse from "lighthouse";
import { launchChromium } from "./chromium.ts";

/** What Lighthouse looks at. */
export const categories = ["performance", "accessibility", "best-practices", "seo"] as const;
export type Category = (typeof categories)[number];

/** What came of one page. */
export interface Judged {
  /** 0 to 100. */
  readonly scores: Readonly<Partial<Record<Category, number>>>;
  /** Audits that count and are not full, with what they say. */
  readonly lacks: readonly string[];
  /** Milliseconds, and the shift as Lighthouse counts it. */
  readonly measured: Readonly<Record<"lcp" | "cls" | "tbt", number>>;
}

/**
 * Runs Lighthouse over pages, one after the other, as a phone on a slow line: its own defaults.
 * @throws Error when a page cannot be loaded.
 */
export async function judged(
  addresses: readonly string[],
  only: readonly Category[] = categories,
): Promise<Judged[]> {
  const port = await freePort();
  const browser = await launchChromium([`--remote-debugging-port=${port}`]);
  try {
    const all: Judged[] = [];
    for (const address of addresses) {
      const result = await lighthouse(address, {
        port,
        output: "json",
        logLevel: "error",
        onlyCategories: [...only],
      });
      if (!result || result.lhr.runtimeError) {
        throw new Error(`${address}: ${result?.lhr.runtimeError?.message ?? "no result"}`);
      }
      const { lhr } = result;
      const lacks = only.flatMap((category) =>
        (lhr.categories[category]?.auditRefs ?? []).flatMap(({ id, weight }) => {
          const audit = lhr.audits[id];
          if (!audit || weight === 0 || audit.score === null || audit.score >= 1) return [];
          return [`${category}: ${id} ${audit.score} ${audit.displayValue ?? audit.title}`];
        }),
      );
      const number = (id: string) => lhr.audits[id]?.numericValue ?? Number.NaN;
      all.push({
        scores: Object.fromEntries(
          only.map((category) => [
            category,
            Math.round(100 * (lhr.categories[category]?.score ?? 0)),
          ]),
        ),
        lacks,
        measured: {
          lcp: number("largest-contentful-paint"),
          cls: number("cumulative-layout-shift"),
          tbt: number("total-blocking-time"),
        },
      });
    }
    return all;
  } finally {
    await browser.close();
  }
}

function freePort(): Promise<number> {
  return new Promise((found, failed) => {
    const server = createServer().once("error", failed);
    server.listen(0, "127.0.0.1", () => {
      const bound = server.address();
      server.close(() => found(typeof bound === "object" && bound ? bound.port : 0));
    });
  });
}
