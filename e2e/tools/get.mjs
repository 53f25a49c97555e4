// Gets every browser the gate drives, while something else is done.
import { needBrowser } from './browser.mjs';
import { findOthers } from './others.mjs';

await needBrowser();
findOthers(['firefox', 'webkit', 'driver', 'xvfb']);
