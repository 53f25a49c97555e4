import { shareFile } from './share';

type SaveAs = (options: {
  readonly suggestedName: string;
  readonly types: readonly object[];
}) => Promise<FileSystemFileHandle>;

const saveAs = (): SaveAs | undefined =>
  (globalThis as { readonly showSaveFilePicker?: SaveAs }).showSaveFilePicker?.bind(globalThis);

type HandedOut = 'file' | 'shared' | 'downloaded' | 'left' | 'not-written';

const isLeft = (error: unknown): boolean => error instanceof DOMException && error.name === 'AbortError';

/**
 * Writes a text to a file of the user's choosing where the browser lets one be chosen; else hands it to the share
 * sheet, else downloads it. The picker comes first, in the tap: the text may take longer than a tap counts.
 */
export async function handOut(name: string, text: () => Promise<string | Blob>): Promise<HandedOut> {
  const chosen = await choose(name);
  if (chosen === 'left') return 'left';
  if (chosen === undefined) {
    const went = await shareFile(name, await text());
    return went === 'saved' ? 'downloaded' : went;
  }
  try {
    return await write(chosen, await text());
  } catch {
    return 'not-written'; // a full or pulled card: what was there before stands
  }
}

/** Where to write to; undefined when there is no picker, or it may not open here. */
async function choose(name: string): Promise<FileSystemFileHandle | 'left' | undefined> {
  try {
    return await saveAs()?.({
      suggestedName: `${name}.txt`,
      types: [{ description: 'Knifeline', accept: { 'text/plain': ['.txt'] } }],
    });
  } catch (error) {
    return isLeft(error) ? 'left' : undefined;
  }
}

/** Only a file that has the whole text in it counts as written. */
async function write(to: FileSystemFileHandle, text: string | Blob): Promise<HandedOut> {
  const whole = new Blob([text]);
  const stream = await to.createWritable();
  await stream.write(whole);
  await stream.close();
  return (await to.getFile()).size === whole.size ? 'file' : 'not-written';
}
