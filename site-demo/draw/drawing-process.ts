import type { Entry } from "./list.ts";
import { picture } from "./picture.ts";

// A process of its own that draws what it is sent, one picture at a time.
process.on("message", async ({ entry, zone }: { entry: Entry; zone: string }) => {
  try {
    process.send?.({ bytes: await picture(entry, zone) });
  } catch (fault) {
    process.send?.({
      fault: fault instanceof Error ? `${entry.file}: ${fault.message}` : String(fault),
    });
  }
});
