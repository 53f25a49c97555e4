// Gets every browser the gate drives, and the reader of PDFs, while something else is done.
import { needBrowser, needShell } from './browser.mjs';
import { findOthers } from './others.mjs';

await needShell();
await needBrowser();
findOthers(['firefox', 'webkit', 'driver', 'xvfb', 'poppler']);
