export const stop = 'Stop';
export const stopped = 'Stopped. Nothing was handed out.';
export const failed = 'The PDF could not be written on this phone. Nothing was handed out.';
export const handOut = 'Hand the PDF out';
export const ready = 'It is written. It took longer than the share sheet waits, so it wants another tap.';
export const went = { shared: 'Shared.', saved: 'Saved as a PDF.', left: '' } as const;
/** @param of how many pages there are, where that is known before they are made */
export const writing = (done: number, of: number | undefined): string =>
  of === undefined ? `Page ${done + 1} …` : `Page ${Math.min(done + 1, of)} of ${of} …`;
