declare module "@11ty/eleventy" {
  import type { EleventyConfig } from "./config.ts";

  /** The part of Eleventy that is used. */
  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        readonly quietMode: boolean;
        readonly configPath: string;
        readonly loader: "esm";
        readonly config: (config: EleventyConfig) => void;
      },
    );
    init(): Promise<void>;
    disableLogger(): void;
    write(): Promise<unknown>;
  }
}
