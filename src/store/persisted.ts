export type Kept = 'kept' | 'may-be-cleared' | 'unknown';

/** Whether the browser has said that it keeps what is here. It may refuse to say. */
export async function isPersisted(): Promise<Kept> {
  try {
    const { storage } = globalThis.navigator;
    return storage?.persisted === undefined
      ? 'unknown'
      : (await storage.persisted())
        ? 'kept'
        : 'may-be-cleared';
  } catch {
    return 'unknown';
  }
}

/** Asks the browser not to clear what is kept here when space runs short, and says what it answered. */
export async function askToPersist(): Promise<Kept> {
  const storage = globalThis.navigator?.storage;
  if (!storage?.persist) return 'unknown';
  try {
    return (await storage.persisted()) || (await storage.persist()) ? 'kept' : 'may-be-cleared';
  } catch {
    return 'unknown'; // private windows refuse the question
  }
}
