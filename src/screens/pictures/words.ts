import { mostFileBytes, mostPixels } from '../../job/picture-head';
import { mostPictureBytes, mostPictures } from '../../job/pictures';
import type { PictureError } from '../pictures';
import { counted } from '../shared/counted';

export const title = 'Notes and pictures';
export const toJob = 'Job';
export const back = 'Back';
export const noJob = 'No job is in hand.';
export const takeOne = 'Take a picture';
export const pickSome = 'Pick pictures';
export const none = 'No picture here yet.';
export const places = 'Where they belong';
export const offTitle = 'Taken off their place';
export const offSays = 'They are kept until they are deleted for good.';
export const takeOff = 'Take it off';
export const putBack = 'Put it back';
export const closeIt = 'Close';
export const deleteForGood = 'Delete for good';
export const deleteAsks = (count: number): string =>
  `Delete ${counted(count, 'picture', 'pictures')} for good?`;
export const deleteSays =
  'Both copies on this phone are deleted, and undo does not bring them back. What another phone or a file has of them stays there.';
export const notDeleted =
  'A copy on this phone did not take the deletion. Try it again once storage answers.';
export const idleTitle = 'Kept, and no longer in the job';
export const idleSays = (count: number): string =>
  count === 1
    ? 'One picture whose adding was undone, or that was deleted on another phone, still takes room here.'
    : `${count} pictures whose adding was undone, or that were deleted on another phone, still take room here.`;

export const sharePictured = 'Share the job with its pictures';
export const fileName = (job: string): string => `${job || 'Job'} with pictures`;

export const pictureNo = (no: number): string => `Picture ${no}`;
export const added = 'Picture added';
export const tookOff = 'Picture taken off';
export const putItBack = 'Picture put back';
export const deleted = 'Picture deleted for good';

export const busy = (done: number, of: number): string =>
  of === 1 ? 'Scaling the picture down' : `Scaling picture ${done + 1} of ${of} down`;

/** Tenths of a megabyte, never less than it is. */
const mb = (bytes: number): string => `${Math.ceil((Math.ceil(bytes) * 10) / 1024 ** 2) / 10} MB`;

/** What the pictures of the job take, of what they may. */
export const held = (count: number, bytes: number): string =>
  count === 0
    ? `A job may have ${mostPictures} pictures, ${mb(mostPictureBytes)} in all.`
    : `${count} of at most ${mostPictures}, ${mb(bytes)} of at most ${mb(mostPictureBytes)}.`;

export const keptSmall =
  'Kept on this phone alone, scaled down, without the place and the time the camera writes into them.';
export const alone = (count: number): string =>
  count === 1
    ? 'One picture is in a single copy on this phone.'
    : `${count} pictures are in a single copy on this phone.`;

/** In place of a picture whose bytes cannot be shown. */
export const notShown = {
  missing: 'Not on this phone',
  damaged: 'Damaged: set aside',
  'no-answer': 'Storage does not answer',
} as const;

const millions = (pixels: number): string => `${Math.ceil(pixels / 1_000_000)} million pixels`;

/** Why a picture was not taken, by how much, and what would do. */
export function refused(error: PictureError): string {
  switch (error.code) {
    case 'no-picture':
      return 'No picture that is taken here: JPEG, PNG, WebP or HEIC.';
    case 'cut-short':
      return 'The file ends before the picture does. Copy it onto the phone again.';
    case 'too-many-pixels':
      return `${error.wide} × ${error.high} pixels are too many: at most ${millions(mostPixels)}, and 20000 along an edge. Set the camera to smaller pictures.`;
    case 'not-decoded':
      return error.type === 'heic'
        ? 'This browser opens no HEIC. Save it as JPEG and pick that, or set the camera to JPEG and take it again.'
        : 'It cannot be opened: the picture in the file is damaged. Copy it onto the phone again, or take it anew.';
    case 'too-big':
      return `The file is ${mb(error.size)}: ${mb(error.size - mostFileBytes)} more than the ${mb(mostFileBytes)} that are opened.`;
    case 'too-many':
      return `The job has ${mostPictures} pictures, and no more go in. Delete one for good first.`;
    case 'too-much':
      return `The pictures of the job would take ${mb(error.bytes)}: ${mb(error.bytes - mostPictureBytes)} over the ${mb(mostPictureBytes)} there is for them. Delete some for good first.`;
    case 'no-room':
      return `The phone has ${mb(error.free)} left, and 20 MB stay free for ticks and readings. Make room on the phone first.`;
    case 'no-answer':
      return 'It did not come through in a minute. Try it again, or a smaller picture.';
    case 'no-check':
      return 'Pictures are kept only where the page came over https.';
    case 'full':
      return 'The phone is full: the picture was not kept. The job itself is.';
    case 'read-only':
      return 'A newer version of the app has what is kept here: open it again.';
    case 'failed':
      return 'Storage did not take the picture. Try it again.';
  }
}

export const refusedOf = (name: string, why: string): string => (name ? `${name}: ${why}` : why);
