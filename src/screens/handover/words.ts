import { assertNever } from '../../length/result';
import type { BundleError } from '../../store/handover/bundle';
import type { FrameError } from '../../store/handover/frame';
import type { CameraState } from './camera';

// Handing over.

export const handOver = 'Hand over';
export const toJob = 'Job';
export const noJob = 'No job in hand. Open one first.';

/** What to do with the other phone while a job is shown in so many codes. */
export const lead = (codes: number): string =>
  codes === 1
    ? 'Hold the other phone over this one.'
    : `Hold the other phone over this one until it has all ${codes} parts.`;
export const tooLong = 'This is too long for codes. Hand it over as a file.';
export const shown = (codes: number): string => (codes === 1 ? 'One code' : `${codes} codes in turn`);

export const whatGoes = 'What to hand over';
export const fresh = (entries: number): string => `${entries} new`;
export const nothingNew = 'Nothing new since it was last handed over.';
export const wholeJob = 'Whole job';

/** What the other phone does, and whether this one goes dark meanwhile. */
export const there = (staysOn: boolean): string =>
  `On that phone: Bring a job file in, then Read codes. ${staysOn ? 'This screen stays on.' : 'This screen may sleep: tap it now and then.'}`;

/** What a tap does to codes as fine, or as large, as they are shown. */
export const otherSize = { fine: 'Larger squares', large: 'Fewer codes' } as const;
export const asFile = 'As a file';
export const fileName = (job: string, what: 'whole' | 'changes'): string =>
  `${job || 'Job'}${what === 'changes' ? ', changes' : ''}`;
/** Codes carry no pictures. */
export const picturesStay = (count: number): string =>
  count === 1
    ? 'Its one picture does not go by codes: share the job with its pictures as a file, under Notes and pictures.'
    : `Its ${count} pictures do not go by codes: share the job with its pictures as a file, under Notes and pictures.`;
export const arrived = 'It has arrived';

// Taking in.

export const readCodes = 'Read codes';
export const back = 'Back';
export const whatCameraSees = 'What the camera sees';
export const holdThere = 'Hold it there.';
export const photo = 'Take a photo of it';
export const onOther =
  'On the other phone: open the job, then Hand over. Nothing is taken in before all of it is here and you have looked at it.';
export const partsRead = 'Parts read';
export const ofParts = (count: number): string => `of ${count}`;

/** On how many photos no code was made out. */
export const unreadPhotos = (photos: number): string =>
  `${photos === 1 ? 'No code could be read' : `On ${photos} photos no code could be read`}. Hold the phone straight over it, so that it fills the picture.`;

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
      return 'There is no camera here. A photo of the code works too.';
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
      return 'That is a code, but not one of Knifeline’s.';
    case 'newer-code':
    case 'newer-bundle':
      return 'That code comes from a newer Knifeline. Bring this one up to date first.';
    case 'misread':
      return 'That code could not be read.';
    case 'torn':
      return 'What arrived is not what was sent. Nothing was changed; it starts again.';
    default:
      return assertNever(error);
  }
}
