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

/**
 * Watches a start from off the page's thread, which may stand still. A file is held from `starting` to `stood`. It
 * names the start for as long as that is short: what is named in it when the next start comes was killed, not frozen.
 */
export function watchOfStart(hold: () => Promise<Handle>) {
  let held: ReturnType<typeof begin> | undefined;

  async function begin(at: string) {
    const file = await hold();
    const before = textOf(file);
    file.truncate(0);
    file.write(new TextEncoder().encode(at), { at: 0 });
    file.flush();
    const late = setTimeout(() => {
      file.truncate(0);
      file.flush();
    }, long);
    return { file, late, before };
  }

  return {
    /**
     * @param at the start: when it began, as the database notes it
     * @returns the start before, if it was watched and ended before it was long; empty where nobody saw that, or a page
     * still on its way holds the file
     */
    starting: async (at: string): Promise<string> => {
      held = begin(at);
      try {
        return (await held).before;
      } catch (error) {
        if (error instanceof DOMException && error.name === 'NoModificationAllowedError') return '';
        throw error;
      }
    },
    stood: async (): Promise<void> => {
      const begun = await held?.catch(() => undefined);
      held = undefined;
      if (!begun) return;
      clearTimeout(begun.late);
      begun.file.truncate(0);
      begun.file.close();
    },
  };
}

function textOf(file: Handle): string {
  const bytes = new Uint8Array(file.getSize());
  file.read(bytes, { at: 0 });
  return new TextDecoder().decode(bytes);
}
