/**
 * Items by a key, each group in the order given, the groups in the order their first item
 * appears. Items whose key is `undefined` are left out.
 *
 * @example grouped(sessions, ({ step }) => step).get("HS-07") // sessions on that step
 */
export function grouped<Key extends string, Item>(
  items: Iterable<Item>,
  keyOf: (item: Item) => Key | undefined,
): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}
