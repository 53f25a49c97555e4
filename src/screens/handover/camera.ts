/** What the camera is at. `refused`: not allowed here. `none`: there is none. `busy`: another app has it. */
export type CameraState = 'asking' | 'on' | 'refused' | 'none' | 'busy';

type Camera = { readonly stop: () => void };

/** The camera on the back, as sharp as a code needs and no sharper: more is slower to read. */
const wanted: MediaStreamConstraints = {
  audio: false,
  video: { facingMode: { ideal: 'environment' }, width: { ideal: 1280 }, height: { ideal: 960 } },
};

/**
 * Shows the back camera in a video. It is let go whenever the page is hidden, and asked for again when it is seen:
 * no light burns, and nothing is looked at, while nobody looks.
 */
export function openCamera(video: HTMLVideoElement, tell: (state: CameraState) => void): Camera {
  let stream: MediaStream | undefined;
  let stopped = false;
  let asking = false;

  const letGo = () => {
    for (const track of stream?.getTracks() ?? []) track.stop();
    stream = undefined;
    video.srcObject = null;
  };
  const hidden = () => stopped || document.visibilityState !== 'visible';

  async function ask(): Promise<void> {
    if (hidden()) return letGo();
    if (stream || asking) return;
    asking = true;
    tell('asking');
    try {
      stream = await streamOf();
      if (hidden()) return letGo();
      video.srcObject = stream;
      await video.play();
      tell('on');
    } catch (error) {
      letGo();
      if (!stopped) tell(stateOf(error));
    } finally {
      asking = false;
    }
  }

  document.addEventListener('visibilitychange', ask);
  void ask();
  return {
    stop: () => {
      stopped = true;
      document.removeEventListener('visibilitychange', ask);
      letGo();
    },
  };
}

/** A page without a secure address has no media devices at all: that is no camera either. */
async function streamOf(): Promise<MediaStream> {
  const { mediaDevices } = navigator as { readonly mediaDevices?: MediaDevices };
  if (!mediaDevices) throw new DOMException('', 'NotFoundError');
  return mediaDevices.getUserMedia(wanted);
}

function stateOf(error: unknown): CameraState {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  return name === 'NotReadableError' || name === 'AbortError' ? 'busy' : 'none';
}
