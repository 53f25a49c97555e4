/**
 * Hands a text out as a file: through the phone's share sheet where it takes files (as .txt, which every sheet does),
 * else as a download. `left` when the sheet was closed without choosing.
 */
export async function shareFile(name: string, text: string): Promise<'shared' | 'saved' | 'left'> {
  const file = new File([text], `${name}.txt`, { type: 'text/plain' });
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: name });
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'left';
    }
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = `${name}.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  return 'saved';
}
