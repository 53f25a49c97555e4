import { save, throughSheet } from './share';

/** Hands out a PDF; `late` where the tap that asked for it is too long ago for the share sheet to open. */
export async function sharePdf(
  name: string,
  pdf: Blob,
): Promise<NonNullable<Awaited<ReturnType<typeof throughSheet>>> | 'late'> {
  const file = new File([pdf], `${name}.pdf`, { type: 'application/pdf' });
  const went = await throughSheet(name, file);
  if (went) return went;
  const isLate = navigator.canShare?.({ files: [file] }) && navigator.userActivation?.isActive === false;
  return isLate ? 'late' : save(file);
}
