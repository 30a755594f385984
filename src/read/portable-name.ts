// Names that Windows keeps for devices, with any ending.
const reserved = /^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(\.|$)/i;

/**
 * Why a file name cannot be carried to every system, in words that end a sentence.
 * @returns `undefined` for a name that can.
 */
export function notPortable(name: string): string | undefined {
  if (reserved.test(name)) return "is kept for a device on Windows";
  if (/[. ]$/.test(name)) return "ends in a dot or a space, which Windows drops";
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what it looks for
  const sign = /[<>:"|?*\\#%\u0000-\u001f]/.exec(name)?.[0];
  if (sign) return `holds \`${sign}\`, which is not allowed in names everywhere or in addresses`;
  return undefined;
}
