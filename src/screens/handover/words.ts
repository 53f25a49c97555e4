import { assertNever } from '../../length/result';
import type { BundleError } from '../../store/handover/bundle';
import type { FrameError } from '../../store/handover/frame';
import type { CameraState } from './camera';

/** What the camera is at, where that needs saying. */
export function cameraText(state: CameraState): string {
  switch (state) {
    case 'asking':
      return 'The phone asks whether its camera may be used here.';
    case 'on':
      return 'Hold this phone over the codes on the other one.';
    case 'refused':
      return 'The camera is not allowed here. Allow it in the browser’s settings for this page, or take a photo of the code.';
    case 'none':
      return 'There is no camera to be had here. A photo of the code does as well.';
    case 'busy':
      return 'Another app has the camera. Close it and come back, or take a photo of the code.';
    default:
      return assertNever(state);
  }
}

/** Why a code is not taken. */
export function codeText(error: FrameError | BundleError): string {
  switch (error.code) {
    case 'not-ours':
      return 'That is a code, but none of Knifeline.';
    case 'newer-code':
    case 'newer-bundle':
      return 'That code comes from a newer Knifeline. Bring this one up to date first.';
    case 'misread':
      return 'That code could not be read whole.';
    case 'torn':
      return 'What came together is not what was sent. Nothing was changed; it begins again.';
    default:
      return assertNever(error);
  }
}
