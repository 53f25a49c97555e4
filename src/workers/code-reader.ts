import decodeQR from 'qr/decode.js';

type Asked = { readonly picture: ImageData; readonly photo: boolean };

/** A photo may take its time; a frame of the camera is one of many. Milliseconds beyond the first look. */
const patience = (photo: boolean): number => (photo ? 2000 : 40);

/** Looks for a code on a picture and tells its text, or that there is none. */
self.onmessage = ({ data: { picture, photo } }: MessageEvent<Asked>) => {
  self.postMessage(read(picture, photo));
};

function read(picture: ImageData, photo: boolean): string | null {
  try {
    return decodeQR(picture, { timeLimit: patience(photo) });
  } catch {
    return null; // no code on it, or none that can be made out
  }
}
