/** What finds the text of a code on a picture. App makes it; it is closed when its screen is left. */
export type CodeReader = {
  /** The text, or null where no code can be made out. A photo may take longer than a frame of the camera. */
  readonly read: (picture: ImageData, photo: boolean) => Promise<string | null>;
  readonly close: () => void;
};
