/// <reference types="vitest/config" />
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import preact from '@preact/preset-vite';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { compactJson } from './build/compact-json.ts';

import { notices } from './build/notices-plugin.ts';
import { fractionWithout, idbWithoutIteration, jspdfInUse } from './build/parts-in-use.ts';
import { preloadMain } from './build/preload-main.ts';
import { scriptsAtOnce } from './build/scripts-at-once.ts';
import { shortElements } from './build/short-elements.ts';
import { shortProperties } from './build/short-properties.ts';
import { manifest } from './src/app/manifest.ts';
import { notInUse } from './src/length/not-in-use.ts';

const { gather, write } = notices();

/** The development server writes styles and scripts of its own into the page; the strict policy is for what is built. */
const policyOff: Plugin = {
  name: 'policy-off-in-dev',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
};

const textOf = (file: string): string => readFileSync(path.join(import.meta.dirname, file), 'utf8');

/** Tests that put nothing else in the place of a global or a module; any other test has its modules to itself. */
const pureTests = !process.env.VITEST
  ? []
  : readdirSync(path.join(import.meta.dirname, 'tests'), { recursive: true, encoding: 'utf8' })
      .map((file) => path.posix.join('tests', file.replaceAll('\\', '/')))
      .filter((file) => /\.test\.tsx?$/.test(file))
      .filter(
        (file) => !/\bvi\.|\bglobalThis\.|fake-indexeddb|page-of-phone|process\.env/.test(textOf(file)),
      );

export default defineConfig({
  root: 'src',
  publicDir: '../public',
  base: './', // any static host, any sub-path: routes live in the hash
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: ['es2022', 'safari16'],
    sourcemap: true,
    modulePreload: { polyfill: false },
    // the words of a screen stand in a file of their own: built, each goes back to where it is said
    rolldownOptions: {
      optimization: { inlineConst: { mode: 'all', pass: 1 } },
      // each of these with all it cannot start without in one file; what the page begins with in another
      output: {
        codeSplitting: {
          groups: [
            { name: 'main', test: /src\/app\/main\.tsx$/, priority: 3 },
            { name: 'file', test: /src\/job\/(file|by-job|own-machines|tool-order)\.ts$/, priority: 2.5 },
            { name: 'home', test: /src\/app\/home\.ts$/, priority: 2 },
            { name: 'planning', test: /src\/app\/planning\.ts$/, priority: 1 },
          ],
        },
      },
    },
  },
  worker: {
    format: 'iife', // as the app: see scripts-at-once
    plugins: () => [gather()],
    rolldownOptions: {
      output: { comments: { annotation: false } }, // of no use once built
      optimization: { inlineConst: { mode: 'all', pass: 1 } },
    },
  },
  plugins: [
    policyOff,
    preact(),
    fractionWithout(notInUse),
    idbWithoutIteration,
    jspdfInUse,
    shortElements,
    shortProperties(),
    compactJson,
    preloadMain,
    scriptsAtOnce,
    gather(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: '.',
      filename: 'sw.ts',
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      manifest,
      injectManifest: {
        globPatterns: ['**/*.{html,js,css,svg,png,woff2,json,txt}'],
        globIgnores: ['robots.txt', 'icon-maskable.svg'], // for crawlers; drawn once more as a PNG
        buildPlugins: { vite: [gather(), write()] },
      },
    }),
  ],
  test: {
    root: import.meta.dirname,
    environment: 'node',
    testTimeout: 180_000, // none rests on time: a busy machine takes three times as long
    pool: 'threads', // a quarter less time than processes of their own
    maxWorkers: 3, // many tests wait: one worker a core leaves cores idle
    projects: [
      // their modules are read once for all files
      { extends: true, test: { name: 'pure', include: pureTests, isolate: false } },
      { extends: true, test: { name: 'others', include: ['tests/**/*.test.{ts,tsx}'], exclude: pureTests } },
    ],
  },
});
