import type { WentOut } from '../copies';

export const copyOut = 'Copy everything out';

/** What became of a copy that was to go out. */
export const wentText: Readonly<Record<WentOut, string>> = {
  file: 'Everything is in the file you chose.',
  shared: 'Everything was shared. Keep the file off this phone too.',
  downloaded: 'Everything is in one file among the downloads.',
  left: 'Cancelled; nothing saved.',
  'not-written': 'The file could not be written in full. Choose another place.',
  'no-check': 'This page did not come over https, so a copy cannot be checked. Nothing was copied.',
};
