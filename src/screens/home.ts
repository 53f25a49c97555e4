/** How the app stands to the phone's home screen. */
export type Home = {
  /** `iphone-browser`: a home-screen app made from here would start empty. */
  readonly at: () => 'home-screen' | 'iphone-browser' | 'browser';
  /** The browser offers to put it there. */
  readonly canPut: () => boolean;
  readonly put: () => void;
};
