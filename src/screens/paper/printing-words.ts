export const stop = 'Stop';
export const stopped = 'Stopped. Nothing was handed out.';
export const failed = 'The PDF could not be written on this phone. Nothing was handed out.';
export const went = { shared: 'Shared.', saved: 'Saved as a PDF.', left: '' } as const;
export const writing = (done: number, of: number): string =>
  of === 0 ? 'Laying out the pages …' : `Page ${Math.min(done + 1, of)} of ${of} …`;
