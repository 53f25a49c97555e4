import { err, ok, type Result } from '../length/result';
import { isId } from './paths';
import { hashOf } from './picture-hash';
import { headOf } from './picture-head';
import { mostPictureSize } from './place-fields';

/** Version of a copy with pictures; the copy inside carries its own. */
const version = 1;
/** Most characters of a line with a picture, and most pictures of a file. */
const mostInLine = 3 * 1024 * 1024;
const mostInFile = 20_000;
const mostEdge = 1600;

/** The bytes of one picture, and the job that shows it. */
export type PictureBytes = { readonly job: string; readonly hash: string; readonly bytes: ArrayBuffer };

export type PicturedError =
  | { readonly code: 'newer-copy'; readonly version: number }
  /** Cut short, or changed since it was written. */
  | { readonly code: 'torn' }
  | { readonly code: 'no-check' }
  /** By its number, from 1. */
  | { readonly code: 'bad-picture'; readonly no: number };

/** Whether a text says of itself that it is a copy with pictures. */
export const isPictured = (text: string): boolean => text.startsWith('{"knifeline-pictures":');

/** The lines a copy with pictures begins with: what it is, and the copy as text. */
export const firstLines = (copy: string): string =>
  `${JSON.stringify({ 'knifeline-pictures': version })}\n${JSON.stringify({ copy })}\n`;

/** @param base64 the bytes, as RFC 4648 has them */
export const pictureLine = (job: string, hash: string, base64: string): string =>
  `${JSON.stringify({ job, hash, jpeg: base64 })}\n`;

type Named = Pick<PictureBytes, 'job' | 'hash'>;

/** The last line, with the SHA-256 of the jobs and hashes of all pictures: a file without it is torn. */
export const lastLine = async (pictures: readonly Named[]): Promise<string> =>
  `${JSON.stringify({ pictures: pictures.length, sha256: await sumOf(pictures) })}\n`;

const sumOf = (pictures: readonly Named[]): Promise<string | undefined> =>
  hashOf(
    new TextEncoder().encode(pictures.map(({ job, hash }) => `${job} ${hash}\n`).join(''))
      .buffer as ArrayBuffer,
  );

/**
 * Reads a copy with pictures line by line, and checks all of it: a picture is whole by its hash, and a JPEG no larger
 * than the app writes.
 *
 * @param lines each without its end
 * @param onPicture is given each picture once it is checked, one at a time
 * @returns the copy inside as text, still to be read
 */
export async function readPictured(
  lines: AsyncIterable<string>,
  onPicture: (picture: PictureBytes) => Promise<unknown>,
): Promise<Result<{ readonly copy: string; readonly pictures: number }, PicturedError>> {
  let copy: string | undefined;
  let no = 0;
  const pictures: Named[] = [];
  for await (const line of lines) {
    const said = parsed(line);
    no += 1;
    if (no === 1) {
      const found = said?.['knifeline-pictures'];
      if (typeof found === 'number' && found > version) return err({ code: 'newer-copy', version: found });
      if (found !== version) return err({ code: 'torn' });
    } else if (no === 2) {
      if (typeof said?.copy !== 'string') return err({ code: 'torn' });
      copy = said.copy;
    } else if (said && 'pictures' in said) {
      const whole = said.pictures === pictures.length && said.sha256 === (await sumOf(pictures));
      return whole && copy !== undefined ? ok({ copy, pictures: pictures.length }) : err({ code: 'torn' });
    } else {
      const picture = await checked(said, pictures.length + 1);
      if (!picture.ok) return picture;
      pictures.push({ job: picture.value.job, hash: picture.value.hash });
      await onPicture(picture.value);
    }
  }
  return err({ code: 'torn' });
}

function parsed(line: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const json: unknown = JSON.parse(line);
    return typeof json === 'object' && json !== null ? (json as Record<string, unknown>) : undefined;
  } catch {
    return undefined;
  }
}

async function checked(
  said: Readonly<Record<string, unknown>> | undefined,
  no: number,
): Promise<Result<PictureBytes, PicturedError>> {
  if (!said || no > mostInFile) return err({ code: 'torn' });
  const { job, hash, jpeg, ...rest } = said;
  const bytes = typeof jpeg === 'string' && jpeg.length <= mostInLine ? bytesOf(jpeg) : undefined;
  const known = typeof job === 'string' && isId(job) && typeof hash === 'string';
  if (!bytes || !known || Object.keys(rest).length > 0) return err({ code: 'bad-picture', no });
  const sum = await hashOf(bytes);
  if (sum === undefined) return err({ code: 'no-check' });
  return sum === hash && isOurs(bytes) ? ok({ job, hash, bytes }) : err({ code: 'bad-picture', no });
}

/** A picture as the app writes them: nothing else is ever given to a screen. */
function isOurs(bytes: ArrayBuffer): boolean {
  const head = headOf(new Uint8Array(bytes));
  if (!head.ok || bytes.byteLength > mostPictureSize) return false;
  const { type, wide, high } = head.value;
  return type === 'jpeg' && Math.max(wide, high) <= mostEdge;
}

/** So many bytes at a time: a whole number of threes. */
const some = 3 * 8192;

/** Bytes as text: RFC 4648, section 4. */
export function base64Of(buffer: ArrayBuffer): string {
  const parts: string[] = [];
  for (let at = 0; at < buffer.byteLength; at += some)
    parts.push(btoa(String.fromCharCode(...new Uint8Array(buffer.slice(at, at + some)))));
  return parts.join('');
}

function bytesOf(base64: string): ArrayBuffer | undefined {
  try {
    return Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0)).buffer;
  } catch {
    return undefined;
  }
}
