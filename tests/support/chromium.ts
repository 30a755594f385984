import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const usualPlaces = [
  process.env.WITNESS_CHROMIUM ?? "",
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:/Program Files/Google/Chrome/Application/chrome.exe",
  "C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe",
];

/**
 * The path of a Chromium: one that is installed, else the test tool's own download, else the
 * system's package manager.
 * @throws When none can be had; browser tests never pass over that.
 */
export function chromiumPath(): string {
  const tried: string[] = [];
  const found = () => [...usualPlaces, chromium.executablePath()].find((path) => existsSync(path));
  const present = found();
  if (present) return present;
  const attempts: readonly (readonly string[])[] = [
    ["npx", "playwright-core", "install", "chromium"],
    ["apt-get", "update"],
    ["apt-get", "install", "-y", "chromium"],
    ["sudo", "-n", "apt-get", "install", "-y", "chromium"],
  ];
  for (const [command = "", ...args] of attempts) {
    const run = spawnSync(command, args, { encoding: "utf8", timeout: 300_000 });
    tried.push(`${command} ${args.join(" ")}: ${run.error?.message ?? `exit ${run.status}`}`);
    const installed = found();
    if (installed) return installed;
  }
  throw new Error(
    `the browser tests need a Chromium and none could be had:\n${tried.join("\n")}\n` +
      "install one, or name it in WITNESS_CHROMIUM",
  );
}

/** A headless browser that makes no requests of its own. */
export function launchChromium(more: readonly string[] = []): Promise<Browser> {
  return chromium.launch({
    executablePath: chromiumPath(),
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      ...more,
    ],
  });
}
