/// <reference types="vitest/config" />
import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { manifest } from './src/app/manifest.ts';

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
  },
  preview: { port: 4173, strictPort: true },
  plugins: [
    preact(),
    VitePWA({
      strategies: 'injectManifest',
      srcDir: '.',
      filename: 'sw.ts',
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      manifest,
      injectManifest: { globPatterns: ['**/*.{html,js,css,svg,png,woff2,json,txt}'] },
    }),
  ],
  test: {
    root: import.meta.dirname,
    include: ['tests/**/*.test.{ts,tsx}'],
    environment: 'node',
    testTimeout: 60_000,
  },
});
