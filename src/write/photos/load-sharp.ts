type SharpModule = typeof import("sharp").default;

let loaded: Promise<SharpModule> | undefined;

/** The image library, loaded once, with every reader off but those of the six kinds of picture. */
export function loadSharp(): Promise<SharpModule> {
  loaded ??= (async () => {
    // Read by the image library when it starts, so it has to be set before the import.
    process.env.VIPS_BLOCK_UNTRUSTED = "1";
    const { default: sharp } = await import("sharp");
    // Should another part of the process have loaded it first: everything off, six kinds on.
    sharp.block({ operation: ["VipsForeignLoad"] });
    sharp.unblock({
      operation: [
        "VipsForeignLoadJpeg",
        "VipsForeignLoadPng",
        "VipsForeignLoadWebp",
        "VipsForeignLoadHeif",
        "VipsForeignLoadNsgif",
        "VipsForeignLoadTiff",
      ],
    });
    sharp.cache(false);
    return sharp;
  })();
  return loaded;
}
