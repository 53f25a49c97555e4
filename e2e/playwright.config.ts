import { defineConfig, devices } from '@playwright/test';
import { chromiumArgs, chromiumPath } from './browser';

export default defineConfig({
  testDir: '.',
  testMatch: '*.e2e.ts',
  outputDir: '../test-results/e2e',
  fullyParallel: false,
  workers: 5, // pages wait more than half of their time: four leave two cores idle
  // patience for a busy machine: no test asks how fast it is
  timeout: 180_000,
  expect: { timeout: 30_000 },
  forbidOnly: true,
  globalSetup: './site.ts',
  use: {
    serviceWorkers: 'block', // see withWorker
    baseURL: process.env.KNIFELINE_SITE ?? '', // site.ts has set it by the time tests run
    launchOptions: { executablePath: chromiumPath, args: chromiumArgs },
  },
  projects: [
    {
      name: 'phone',
      use: {
        ...devices['Pixel 7'],
        viewport: { width: 390, height: 844 },
        // seven times fewer points to paint; pictures for people are as sharp as the phone's
        deviceScaleFactor: process.env.KNIFELINE_SHOTS ? devices['Pixel 7'].deviceScaleFactor : 1,
        launchOptions: { executablePath: chromiumPath, args: chromiumArgs },
      },
    },
  ],
});
