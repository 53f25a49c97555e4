import type { CodeReader } from '../screens/handover/reader';

type Detector = { detect(picture: ImageData): Promise<readonly { readonly rawValue: string }[]> };
type Detectors = {
  new (options: { readonly formats: readonly string[] }): Detector;
  getSupportedFormats(): Promise<readonly string[]>;
};

/** The phone's own reader, where it has one that knows these codes. */
async function ownDetector(): Promise<Detector | undefined> {
  const Detectors = (self as { BarcodeDetector?: Detectors }).BarcodeDetector;
  const formats = await Detectors?.getSupportedFormats();
  return Detectors && formats?.includes('qr_code') ? new Detectors({ formats: ['qr_code'] }) : undefined;
}

/** Reads codes with the phone's own reader first, and with ours, off the page's thread, where that finds nothing. */
export function openCodeReader(): CodeReader {
  const own = ownDetector().catch(() => undefined);
  const worker = new Worker(new URL('../workers/code-reader.ts', import.meta.url), {
    type: 'module',
    name: 'code-reader',
  });
  const detected = async (picture: ImageData): Promise<string | undefined> => {
    const found = await (await own)?.detect(picture).catch(() => []);
    return found?.[0]?.rawValue;
  };
  const looked = (picture: ImageData, photo: boolean): Promise<string | null> =>
    new Promise((done) => {
      worker.onmessage = ({ data }: MessageEvent<string | null>) => done(data);
      worker.onerror = () => done(null);
      worker.postMessage({ picture, photo }, [picture.data.buffer]);
    });
  let last: Promise<unknown> = Promise.resolve();
  return {
    // one picture at a time: an answer belongs to the picture asked about last
    read: (picture, photo) => {
      const now = last.then(async () => (await detected(picture)) ?? looked(picture, photo));
      last = now.catch(() => undefined);
      return now;
    },
    close: () => worker.terminate(),
  };
}
