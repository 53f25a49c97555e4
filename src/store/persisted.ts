export type Kept = 'kept' | 'may-be-cleared' | 'unknown';

/** Whether the browser has said that it keeps what is here. */
export const isPersisted = (): Promise<Kept> => answerTo((storage) => storage.persisted());

/** Asks the browser not to clear what is kept here when space runs short, and says what it answered. */
export const askToPersist = (): Promise<Kept> =>
  answerTo(async (storage) => (await storage.persisted()) || storage.persist());

/** Some browsers have no such question, and private windows refuse it. */
async function answerTo(question: (storage: StorageManager) => Promise<boolean>): Promise<Kept> {
  try {
    return (await question(navigator.storage)) ? 'kept' : 'may-be-cleared';
  } catch {
    return 'unknown';
  }
}
