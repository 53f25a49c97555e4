/** The Chromium the tests drive; tests/gate.mjs finds or installs it. */
export const chromiumPath = process.env.CHROMIUM_PATH ?? '/usr/bin/chromium';

export const chromiumArgs = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
