import { useEffect, useRef, useState } from 'preact/hooks';
import { Bar } from '../../ui/bar';
import type { Bench } from '../bench';
import { useWake } from '../shared/use-wake';
import { type CameraState, openCamera } from './camera';
import { frameOf, photoOf } from './picture';
import type { CodeReader } from './reader';
import { type Progress, type Taking, taking } from './taking';
import * as words from './words';
import './handover.css';

type TakeInProps = { readonly bench: Bench; readonly openReader: () => CodeReader };

/** A job off another phone's screen, by the camera or by photos. When it is whole it is looked at like any file. */
export function TakeInScreen({ bench, openReader }: TakeInProps) {
  useWake(bench);
  const [{ reader, take }] = useState(() => ({
    reader: openReader(),
    take: taking((text) => void bench.incoming.offer(text).then(() => bench.go({ at: 'import' }, true))),
  }));
  const { video, camera } = useCamera(reader, take);
  const looks = camera === 'on' || camera === 'asking';
  const progress = take.progress.value;
  return (
    <>
      <Bar title={words.readCodes} leave={{ label: words.back, onTap: () => bench.go({ at: 'import' }) }} />
      <main class="page takein">
        <video
          ref={video}
          class={camera === 'on' ? 'view' : 'view off'}
          hidden={!looks}
          playsInline
          muted
          aria-label={words.whatCameraSees}
        />
        <div class="pad-x handwords">
          <HowFar progress={progress} />
          <p class="handlead" role="status">
            {leadOf(camera, take)}
          </p>
          <Photos reader={reader} take={take} main={!looks} />
          <p class="note">{words.onOther}</p>
        </div>
      </main>
    </>
  );
}

/** What went wrong with the codes, else that they come, else what the camera is at. */
function leadOf(camera: CameraState, { trouble, progress }: Taking): string {
  if (trouble.value) return words.codeText(trouble.value);
  return progress.value ? words.holdThere : words.cameraText(camera);
}

/** The camera, and what it shows looked at, as long as the screen stands. */
function useCamera(reader: CodeReader, take: Taking) {
  const video = useRef<HTMLVideoElement>(null);
  const [camera, setCamera] = useState<CameraState>('asking');
  useEffect(() => {
    const at = video.current;
    if (!at) return;
    const open = openCamera(at, setCamera);
    const stop = watch(at, reader, take);
    return () => {
      stop();
      open.stop();
      reader.close();
    };
  }, []);
  return { video, camera };
}

/** The one figure of this screen: how many parts of how many. */
function HowFar({ progress }: { readonly progress: Progress | undefined }) {
  if (!progress) return null;
  const { have, count } = progress;
  return (
    <p
      class="howfar"
      role="progressbar"
      aria-label={words.partsRead}
      aria-valuemin={0}
      aria-valuemax={count}
      aria-valuenow={have}
    >
      {have} <small>{words.ofParts(count)}</small>
    </p>
  );
}

/** Looks at what the camera shows, one picture after the other, until stopped. */
function watch(video: HTMLVideoElement, reader: CodeReader, take: Taking): () => void {
  let stopped = false;
  async function look(): Promise<void> {
    while (!stopped) {
      const picture = video.srcObject ? frameOf(video) : undefined;
      const text = picture ? await reader.read(picture, false) : null;
      if (stopped) return;
      if (text !== null) take.seen(text);
      await nextFrame(picture ? 30 : 150);
    }
  }
  void look();
  return () => {
    stopped = true;
  };
}

const nextFrame = (wait: number): Promise<void> => new Promise((done) => setTimeout(done, wait));

type PhotosProps = { readonly reader: CodeReader; readonly take: Taking; readonly main: boolean };

function Photos({ reader, take, main }: PhotosProps) {
  const [unread, setUnread] = useState(0);
  const look = async (files: readonly File[]) => {
    setUnread(0);
    for (const file of files) {
      const picture = await photoOf(file);
      const text = picture ? await reader.read(picture, true) : null;
      if (text === null || !take.seen(text)) setUnread((n) => n + 1);
    }
  };
  return (
    <>
      <label class={main ? 'btn main file' : 'btn file'}>
        {words.photo}
        <input
          class="sr"
          type="file"
          accept="image/*"
          capture="environment"
          multiple
          onChange={(event) => {
            const files = [...(event.currentTarget.files ?? [])];
            event.currentTarget.value = ''; // the same photo may come again
            void look(files);
          }}
        />
      </label>
      {unread > 0 && (
        <p class="wrongline" role="alert">
          {words.unreadPhotos(unread)}
        </p>
      )}
    </>
  );
}
