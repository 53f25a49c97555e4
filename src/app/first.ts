import '../ui/tokens.css';
import '../ui/base.css';
import '../ui/plain.css';
import '../ui/paint.css';
import '../ui/button.css';
import '../screens/shared/page.css';
import '../screens/shared/rows.css';
import './picture.css';
import { journalWorker } from './journal-worker';
import { dropPicture, forgetPicture, isPicture, painted, savePicture, showPicture, tapped } from './picture';

/** What the page begins with: where the user was, as it stood last, on the screen before the app is read in. */
async function first(): Promise<void> {
  // the browser reads in what it needs to open the app's own while the screen is painted
  const kept = Promise.resolve(globalThis.indexedDB?.databases?.()).catch(() => undefined);
  const worker = journalWorker(); // the first screen waits for what it holds: it starts while the app is on its way
  const shown = showPicture(worker).catch(dropPicture); // a page whose picture fails opens all the same
  await (await import('./main')).begin({
    shown,
    dropPicture,
    isPicture,
    savePicture,
    forgetPicture,
    painted,
    tapped,
    kept,
    worker,
  });
}

// where the app does not come, the words of the page itself stand clear
void first().catch(dropPicture);
