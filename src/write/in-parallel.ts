// The disk answers many small requests sooner when it is asked several at once.
const usuallyAtOnce = 32;

/** Does something to each item, several at once; ends at the first failure. */
export async function inParallel<Item>(
  items: Iterable<Item>,
  work: (item: Item) => Promise<void>,
  atOnce = usuallyAtOnce,
): Promise<void> {
  const queue = items[Symbol.iterator]();
  const worker = async (): Promise<void> => {
    for (let next = queue.next(); !next.done; next = queue.next()) await work(next.value);
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
}
