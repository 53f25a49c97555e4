/** A file as a worker holds it: nobody else has it until it is closed. */
type Handle = {
  readonly getSize: () => number;
  readonly read: (bytes: Uint8Array<ArrayBuffer>, options: { readonly at: number }) => number;
  readonly write: (bytes: Uint8Array<ArrayBuffer>, options: { readonly at: number }) => number;
  readonly flush: () => void;
  readonly truncate: (size: number) => void;
  readonly close: () => void;
};

/** A start that takes longer may never come to its screen. Milliseconds. */
export const long = 4000;

/** What is said of a start that was seen to take long, and never stood. */
export const frozen = 'frozen';

/**
 * Watches a start from off the page's thread, which may stand still. A file is held from `starting` to `stood`. It
 * names the start for as long as that is short, and again once it stood: what is named in it when the next start comes
 * did not freeze. In between it says `frozen`.
 */
export function watchOfStart(hold: () => Promise<Handle>) {
  let held: ReturnType<typeof begin> | undefined;

  async function begin(at: string) {
    const file = await hold();
    const before = textOf(file);
    put(file, at);
    const late = setTimeout(() => put(file, frozen), long);
    return { file, late, before, at };
  }

  return {
    /**
     * @param at the start: when it began, as the database notes it
     * @returns the last start that was watched, if it stood or ended before it was long; `frozen` if it was seen to be
     * long, or its page still holds the file; empty where nobody saw any
     */
    starting: async (at: string): Promise<string> => {
      held = begin(at);
      try {
        return (await held).before;
      } catch (error) {
        if (error instanceof DOMException && error.name === 'NoModificationAllowedError') return frozen;
        throw error;
      }
    },
    stood: async (): Promise<void> => {
      const begun = await held?.catch(() => undefined);
      held = undefined;
      if (!begun) return;
      clearTimeout(begun.late);
      put(begun.file, begun.at); // the database may be left before its note is gone
      begun.file.close();
    },
  };
}

function put(file: Handle, text: string): void {
  file.truncate(0);
  file.write(new TextEncoder().encode(text), { at: 0 });
  file.flush();
}

function textOf(file: Handle): string {
  const bytes = new Uint8Array(file.getSize());
  file.read(bytes, { at: 0 });
  return new TextDecoder().decode(bytes);
}
