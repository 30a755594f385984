import { parse } from "yaml";
import { sceneNames } from "./scenes/index.ts";

/** One picture to draw. */
export interface Entry {
  /** Below `photos/`, with forward slashes. */
  readonly file: string;
  readonly scene: string;
  readonly detail: Readonly<Record<string, string>>;
  /** Year, month, day, hour and minute on the shop's clock, `2026-03-14 19:20`. */
  readonly taken: string;
  /** How the camera was held: the EXIF number, 1 to 8. */
  readonly orientation: number;
  readonly view: string;
}

/** The list is not fit to draw from; the message names every fault. */
export class ListFault extends Error {}

/**
 * Reads the list of pictures.
 *
 * @throws ListFault when an entry is not complete or names an unknown scene.
 */
export function readList(text: string): Entry[] {
  const raw: unknown = parse(text);
  if (!Array.isArray(raw)) throw new ListFault("the list is not a list");
  const faults: string[] = [];
  const files = new Set<string>();
  const entries = raw.flatMap((item: unknown, i) => {
    const where = `entry ${i + 1}`;
    if (typeof item !== "object" || item === null) {
      faults.push(`${where}: not a map`);
      return [];
    }
    const field = new Map(Object.entries(item));
    const file = String(field.get("file") ?? "");
    const scene = String(field.get("scene") ?? "");
    const taken = String(field.get("taken") ?? "");
    const orientation = Number(field.get("orientation") ?? 1);
    const name = file || where;
    if (!/^[\w-]+(\/[\w.-]+)*\.jpg$/.test(file))
      faults.push(`${name}: \`file\` is not a .jpg below photos/`);
    if (files.has(file)) faults.push(`${name}: named twice`);
    files.add(file);
    if (!sceneNames().includes(scene)) faults.push(`${name}: ${unknownScene(scene)}`);
    if (!/^\d{4}-\d\d-\d\d \d\d:\d\d$/.test(taken)) {
      faults.push(`${name}: \`taken\` is not a date and a time`);
    }
    if (!Number.isInteger(orientation) || orientation < 1 || orientation > 8) {
      faults.push(`${name}: \`orientation\` is not 1 to 8`);
    }
    const given: unknown = field.get("detail");
    const detail = Object.fromEntries(
      Object.entries(typeof given === "object" && given !== null ? given : {}).map(
        ([key, value]) => [key, Array.isArray(value) ? value.join(" ") : String(value)],
      ),
    );
    return [{ file, scene, detail, taken, orientation, view: String(field.get("view") ?? "") }];
  });
  if (faults.length > 0) throw new ListFault(faults.join("\n"));
  return entries;
}

/** Says that there is no such scene, and which one may be meant. */
export function unknownScene(name: string): string {
  const nearest = [...sceneNames()].sort((a, b) => distance(name, a) - distance(name, b))[0];
  const near = nearest && distance(name, nearest) <= Math.max(3, nearest.length / 2);
  return `no scene \`${name}\`${near ? `, perhaps \`${nearest}\`` : ""}`;
}

/** How many letters have to be added, dropped or changed. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, change));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
