import type { Timecode } from "../model/video.ts";
import { textAs } from "./shape.ts";
import type { TextNode } from "./typed-tree.ts";

/** A time in a recording with its place. */
export interface TimecodeNode extends Timecode {
  readonly node: TextNode;
}

/** `1:23` is a minute and 23 seconds, `1:02:03` an hour, two minutes and three seconds. */
export const timecode = textAs<TimecodeNode>((node, faults) => {
  const typed = /^(?:(\d{1,2}):([0-5]\d)|(\d{1,3})):([0-5]\d)$/.exec(node.text);
  if (typed) {
    const minutes = typed[3] === undefined ? Number(typed[1]) * 60 + Number(typed[2]) : typed[3];
    return { seconds: Number(minutes) * 60 + Number(typed[4]), typed: node.text, node };
  }
  return faults.add("not-a-time", node.span, {
    message: `\`${node.text}\` is not a time in a recording`,
    help: ['write minutes and seconds, as in `"1:23"`, or `"1:02:03"` from an hour on'],
  });
});
