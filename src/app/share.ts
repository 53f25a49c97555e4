/** How a file went: `left` when the share sheet was closed without choosing. */
type Went = 'shared' | 'saved' | 'left';

/** Hands a text out as a file: .txt through the phone's share sheet, which every sheet takes, else .json saved. */
export async function shareFile(name: string, text: string | Blob): Promise<Went> {
  const file = new File([text], `${name}.txt`, { type: 'text/plain' });
  return (
    (await throughSheet(name, file)) || save(new File([text], `${name}.json`, { type: 'application/json' }))
  );
}

/** Through the phone's share sheet; nothing where there is none that takes files, or it did not open. */
export async function throughSheet(name: string, file: File): Promise<Went | undefined> {
  if (!navigator.canShare?.({ files: [file] })) return undefined;
  try {
    await navigator.share({ files: [file], title: name });
    return 'shared';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'left' : undefined;
  }
}

/** As a download. */
export function save(file: File): 'saved' {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  return 'saved';
}
