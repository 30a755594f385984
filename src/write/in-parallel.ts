// The disk answers many small requests sooner when it is asked several at once.
const usuallyAtOnce = 32;

/**
 * Does something to each item, several at once. After a failure no further item is begun, and
 * the first error is thrown once all that had been begun have come to rest: nothing goes on
 * writing behind the caller's back.
 */
export async function inParallel<Item>(
  items: Iterable<Item>,
  work: (item: Item) => Promise<void>,
  atOnce = usuallyAtOnce,
): Promise<void> {
  const queue = items[Symbol.iterator]();
  let failed = false;
  const worker = async (): Promise<void> => {
    try {
      for (let next = queue.next(); !failed && !next.done; next = queue.next()) {
        await work(next.value);
      }
    } catch (error) {
      failed = true;
      throw error;
    }
  };
  const ends = await Promise.allSettled(Array.from({ length: atOnce }, worker));
  for (const end of ends) if (end.status === "rejected") throw end.reason;
}
