import type { WentOut } from '../copies';
import { counted } from './counted';

export const writing = 'Putting the pictures into the file';

const went: Readonly<Record<WentOut, string>> = {
  file: 'It is in the file you chose, pictures and all.',
  shared: 'It was shared, pictures and all.',
  downloaded: 'It is in one file among the downloads, pictures and all.',
  left: 'Cancelled; nothing saved.',
  'not-written': 'The file could not be written in full. Choose another place.',
  'no-check': 'This page did not come over https, so a copy cannot be checked. Nothing was copied.',
};

/** What became of a copy with pictures, and how many of them are not whole on this phone. */
export function wentOut(how: WentOut, missing: number): string {
  const out = how === 'file' || how === 'shared' || how === 'downloaded';
  return out && missing > 0
    ? `${went[how].replace(', pictures and all', '')} ${counted(missing, 'picture is', 'pictures are')} not whole on this phone and did not go along.`
    : went[how];
}
