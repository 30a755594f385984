import type { Drawing } from "../model/project.ts";
import { nameOf, type Shape, textAs } from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

/**
 * `HS-03 rev C` or `HS-03`: the drawing has to be declared, the revision may be an older one.
 * @param drawings Those of project.yaml.
 */
export function drawingReference(drawings: readonly Drawing[]): Shape<TextNode> {
  const declared = new Map(drawings.map((drawing) => [drawing.id, drawing]));
  const known = nameOf("drawing", "project.yaml", declared);
  return textAs((node, faults) => {
    const typed = /^(\S+)( rev \S+)?$/.exec(node.text);
    const named = known({ ...node, text: typed?.[1] ?? node.text }, faults);
    return named && node;
  });
}
