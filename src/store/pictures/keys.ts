import { hashOf } from '../../job/picture-hash';

/** The key the bytes of a picture are kept under in both copies: its job, and their SHA-256. */
export const pictureKey = (job: string, hash: string): string => `${job}~${hash}`;

/** Where bytes stand that are no longer those of their key. */
export const asideKey = (key: string): string => `${key}~damaged`;
export const isAside = (key: string): boolean => key.endsWith('~damaged');

/** The job and the hash of a key. */
export function partsOf(key: string): { readonly job: string; readonly hash: string } {
  const [job = '', hash = ''] = key.split('~');
  return { job, hash };
}

/** Whether bytes are those their key names. */
export const isWhole = async (key: string, bytes: ArrayBuffer): Promise<boolean> =>
  (await hashOf(bytes)) === partsOf(key).hash;
