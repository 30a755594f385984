import { textAs } from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

/** A place as one short word, `shop`: it is published, and says where only to those who know. */
export const placeCode = textAs<TextNode>((node, faults) => {
  if (/^[\p{L}\p{N}][\p{L}\p{N}._-]{0,29}$/u.test(node.text)) return node;
  return faults.add("not-an-id", node.span, {
    message: `\`${node.text}\` is not a place code`,
    notes: ["places are published, in the public edition too"],
    help: ["write one short word that names no street, as in `shop` or `hangar-2`"],
  });
});
