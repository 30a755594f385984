import { textAs } from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

/** A whole address on the web, as typed: `https://videos.example/rivets`. */
export const webLink = textAs<TextNode>((node, faults) => {
  const address = /\s/.test(node.text) || !URL.canParse(node.text) ? undefined : new URL(node.text);
  if (address && /^https?:$/.test(address.protocol) && !address.username && !address.password) {
    return node;
  }
  return faults.add("not-a-link", node.span, {
    message: address?.username
      ? "the link holds a name to sign in with"
      : `\`${node.text}\` is not a whole address on the web`,
    help: ["copy the address as the browser shows it, from `https://` on"],
  });
});
