import { mostBytes } from '../../job/file';
import { err, ok, type Result } from '../../length/result';

/** Version of the bundle: its first byte. */
const version = 1;
const checkBytes = 32;

export type BundleError =
  | { readonly code: 'newer-bundle'; readonly version: number }
  /** What came together is not what was sent. */
  | { readonly code: 'torn' };

/**
 * Packs a text: a version, the SHA-256 of the text, the text deflated.
 *
 * @param text a job file, or changes to one, without line ends and blanks (`compact`)
 */
export async function pack(text: string): Promise<Uint8Array> {
  const plain = new TextEncoder().encode(text);
  const small = await through(plain, new CompressionStream('deflate-raw'));
  const bundle = new Uint8Array(1 + checkBytes + (small?.length ?? 0));
  bundle[0] = version;
  bundle.set(await checkOf(plain), 1);
  bundle.set(small ?? [], 1 + checkBytes);
  return bundle;
}

/** The very text that was packed, or nothing of it. */
export async function unpack(bundle: Uint8Array): Promise<Result<string, BundleError>> {
  const [found = 0] = bundle;
  if (found > version) return err({ code: 'newer-bundle', version: found });
  if (found < version || bundle.length <= 1 + checkBytes) return err({ code: 'torn' });
  const plain = await through(bundle.slice(1 + checkBytes), new DecompressionStream('deflate-raw'));
  if (!plain) return err({ code: 'torn' });
  const check = await checkOf(plain);
  const same = check.every((byte, k) => byte === bundle[k + 1]);
  return same ? ok(new TextDecoder().decode(plain)) : err({ code: 'torn' });
}

const checkOf = async (bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> =>
  new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));

type Through = {
  readonly readable: ReadableStream<Uint8Array>;
  readonly writable: WritableStream<BufferSource>;
};

/** Bytes through a stream; undefined when they are no such stream, or grow past what a job can be. */
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  { readable, writable }: Through,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const writer = writable.getWriter();
  // a broken stream fails at the reading end too: it is told there
  const written = Promise.all([writer.write(bytes), writer.close()]).catch(() => undefined);
  const reader = readable.getReader();
  const parts: Uint8Array<ArrayBufferLike>[] = [];
  let length = 0;
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
      parts.push(next.value);
      length += next.value.length;
      if (length > mostBytes) return undefined;
    }
    await written;
  } catch {
    return undefined;
  } finally {
    void reader.cancel().catch(() => undefined);
  }
  return joined(parts, length);
}

function joined(parts: readonly Uint8Array[], length: number): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
