/** A file as a worker holds it: nobody else has it until it is closed. */
type Handle = {
  readonly getSize: () => number;
  readonly write: (bytes: Uint8Array<ArrayBuffer>, options: { readonly at: number }) => number;
  readonly flush: () => void;
  readonly truncate: (size: number) => void;
  readonly close: () => void;
};

/** A start that takes longer is noted: it may never come to its screen. Milliseconds. */
export const long = 4000;

/**
 * Watches a start from off the page's thread, which may stand still: a file is held from `starting` to `stood`, and a
 * start that takes long leaves a byte in it.
 */
export function watchOfStart(hold: () => Promise<Handle>) {
  let held: Promise<{ readonly file: Handle; readonly late: ReturnType<typeof setTimeout> }> | undefined;

  async function begin() {
    const file = await hold();
    const late = setTimeout(() => {
      file.write(new Uint8Array([1]), { at: 0 });
      file.flush();
    }, long);
    return { file, late };
  }

  return {
    /** @returns whether the start before left a byte, or a page still on its way holds the file */
    starting: async (): Promise<boolean> => {
      held = begin();
      try {
        return (await held).file.getSize() > 0;
      } catch (error) {
        if (error instanceof DOMException && error.name === 'NoModificationAllowedError') return true;
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
