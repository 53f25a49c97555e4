/** How a file went: `left` when the share sheet was closed without choosing. */
type Went = 'shared' | 'saved' | 'left';

/** Hands a text out as a file: .txt through the phone's share sheet, which every sheet takes, else .json saved. */
export const shareFile = (name: string, text: string | Blob): Promise<Went> =>
  handOut(
    name,
    new File([text], `${name}.txt`, { type: 'text/plain' }),
    new File([text], `${name}.json`, { type: 'application/json' }),
  );

/** Hands out a PDF. */
export function sharePdf(name: string, pdf: Blob): Promise<Went> {
  const file = new File([pdf], `${name}.pdf`, { type: 'application/pdf' });
  return handOut(name, file, file);
}

/** Through the phone's share sheet where it takes files, else as a download. */
async function handOut(name: string, file: File, saved: File): Promise<Went> {
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: name });
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'left';
    }
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(saved);
  link.download = saved.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  return 'saved';
}
