/** Stands last among the cautions of every answer. */
export const governs =
  "general information: the drawings, the manufacturer's data, local rules and a licensed person govern";
