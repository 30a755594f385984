// A slip of the keyboard is a letter or two; in long names a third would be another name.
const farthest = 4;

/**
 * The known name closest to what was typed, by the fewest letters changed, left out, added or
 * swapped with their neighbour (Damerau–Levenshtein, restricted), letter case aside.
 * @returns `undefined` when nothing is close: more than a third of the longer one's
 *   letters would differ, or more than four; of a short one more than one letter.
 */
export function nearestName(typed: string, known: Iterable<string>): string | undefined {
  const wanted = typed.toLowerCase();
  let nearest: string | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const name of known) {
    const edits = editsBetween(wanted, name.toLowerCase());
    const third = Math.floor(Math.max(typed.length, name.length) / 3);
    const most = Math.min(farthest, Math.max(1, third));
    if (edits <= most && edits < fewest) {
      fewest = edits;
      nearest = name;
    }
  }
  return nearest;
}

function editsBetween(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min(
        (last[j] ?? 0) + 1,
        (row[j - 1] ?? 0) + 1,
        (last[j - 1] ?? 0) + (same ? 0 : 1),
      );
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, (beforeLast[j - 2] ?? 0) + 1);
      }
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}
