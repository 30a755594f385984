import { createRequire } from "node:module";
import { Worker } from "node:worker_threads";
import type { HeicDecoder } from "./encode-picture.ts";

// The decoder writes what it thinks of a file to the terminal, where answers are read by
// programs, and nothing can stop it once it has begun: it works in a thread of its own.
const thread = `
const { parentPort, workerData } = require("node:worker_threads");
const convert = require(workerData.decoder);
convert({ buffer: workerData.bytes, format: "JPEG", quality: 0.95 }).then((jpeg) => {
  parentPort.postMessage(new Uint8Array(jpeg));
});
`;

/**
 * The optional package `heic-convert`, if it is installed beside this program. What it gives
 * stands upright: the turn that stands in the boxes of the file is made, and the one in its
 * EXIF, which tells the same again, is not made a second time (ISO/IEC 23008-12, 6.5.10).
 *
 * @param seconds After which a picture is given up.
 * @returns Undefined when it is not installed.
 */
export function installedHeicDecoder(seconds = 60): HeicDecoder | undefined {
  let decoder: string;
  try {
    decoder = createRequire(import.meta.url).resolve("heic-convert");
  } catch {
    return undefined;
  }
  return (bytes) =>
    new Promise((resolve, reject) => {
      const worker = new Worker(thread, {
        eval: true,
        workerData: { decoder, bytes },
        // What it prints goes nowhere; flags meant for this program are not for it.
        stdout: true,
        stderr: true,
        execArgv: [],
      });
      const late = setTimeout(() => {
        reject(new Error(`timeout: ${seconds} s exceeded`));
        void worker.terminate();
      }, seconds * 1000);
      worker.on("message", (jpeg: Uint8Array) => resolve(jpeg));
      worker.on("error", reject);
      worker.on("exit", () => {
        clearTimeout(late);
        reject(new Error("the HEIC decoder gave no picture"));
      });
    });
}
