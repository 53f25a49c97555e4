import { type ReadonlySignal, signal } from '@preact/signals';
import { type BundleError, unpack } from '../../store/handover/bundle';
import { type FrameError, readFrame } from '../../store/handover/frame';
import { gathering } from '../../store/handover/gather';

/** How far the codes have come. */
export type Progress = { readonly have: number; readonly count: number };

export type Taking = {
  /** Undefined until the first code of ours. */
  readonly progress: ReadonlySignal<Progress | undefined>;
  readonly trouble: ReadonlySignal<FrameError | BundleError | undefined>;
  /** Takes the text of a code as often as it comes; true when it was one of ours, read whole. */
  readonly seen: (text: string) => boolean;
};

/**
 * Puts codes together and hands their text on, once.
 *
 * @param whole called with the text when all of it is there and its check is right
 */
export function taking(whole: (text: string) => void): Taking {
  let gather = gathering();
  let done = false;
  const progress = signal<Progress | undefined>(undefined);
  const trouble = signal<FrameError | BundleError | undefined>(undefined);

  async function finish(bundle: Uint8Array): Promise<void> {
    done = true;
    const read = await unpack(bundle);
    if (read.ok) return whole(read.value);
    // what came together is thrown away with all its codes: the set begins anew
    gather = gathering();
    progress.value = undefined;
    trouble.value = read.error;
    done = false;
  }

  function seen(text: string): boolean {
    if (done) return true;
    const frame = readFrame(text);
    if (!frame.ok) {
      if (frame.error.code !== 'misread') trouble.value = frame.error;
      return false;
    }
    const { have, count, bundle } = gather.add(frame.value);
    progress.value = { have, count };
    trouble.value = undefined;
    if (bundle) void finish(bundle);
    return true;
  }
  return { progress, trouble, seen };
}
