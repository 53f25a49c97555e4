/** The other open pages of the app on this phone; nobody, where the browser has no channel. */
export type Pages = {
  readonly tell: (what: string) => void;
  readonly hear: (heard: (what: string) => void) => void;
  readonly close: () => void;
};

const alone: Pages = { tell: () => undefined, hear: () => undefined, close: () => undefined };

export function pagesOn(name: string): Pages {
  if (!('BroadcastChannel' in globalThis)) return alone;
  const channel = new BroadcastChannel(name);
  let open = true;
  return {
    // a write may end after the page let go: it is kept all the same
    tell: (what) => open && channel.postMessage(what),
    hear: (heard) => channel.addEventListener('message', (event) => heard(String(event.data))),
    close: () => {
      open = false;
      channel.close();
    },
  };
}
