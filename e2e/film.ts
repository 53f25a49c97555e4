import { mkdtempSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser, Page } from '@playwright/test';

/** A film as Chromium's made-up camera plays it, over and over: uncompressed, 4:2:0. */
const width = 960;
const height = 720;

/** How badly it is filmed: turned by so many degrees, greys off by so much, out of focus by so many pixels. */
export type Hand = { readonly turn: number; readonly grain: number; readonly blur: number };

/** Shots of the codes on a screen as they go by, no two alike. */
export async function shots(page: Page, selector: string, count: number): Promise<readonly Buffer[]> {
  const taken: Buffer[] = [];
  for (let k = 0; k < count; k += 1) {
    taken.push(await page.locator(selector).screenshot());
    await page.locator(selector).evaluate(otherPicture);
  }
  return taken;
}

/** Runs in the page: waits until the canvas shows something else. */
async function otherPicture(canvas: SVGElement | HTMLElement): Promise<void> {
  const now = () => (canvas as HTMLCanvasElement).toDataURL();
  const before = now();
  while (now() === before) await new Promise((done) => requestAnimationFrame(done));
}

/** Films shots lying on a bench; returns the film's path. */
export async function film(browser: Browser, pictures: readonly Buffer[], hand: Hand): Promise<string> {
  const page = await browser.newPage();
  const frames: Buffer[] = [];
  for (const picture of pictures) {
    const asked = { png: picture.toString('base64'), width, height, hand };
    frames.push(Buffer.from(await page.evaluate(greys, asked), 'base64'));
  }
  await page.close();
  const grey = Buffer.alloc((width * height) / 2, 128);
  const head = Buffer.from(`YUV4MPEG2 W${width} H${height} F8:1 Ip A1:1 C420jpeg\n`);
  const file = path.join(mkdtempSync(path.join(os.tmpdir(), 'knifeline-film-')), 'codes.y4m');
  writeFileSync(file, Buffer.concat([head, ...frames.flatMap((y) => [Buffer.from('FRAME\n'), y, grey])]));
  return file;
}

type Asked = {
  readonly png: string;
  readonly width: number;
  readonly height: number;
  readonly hand: Hand;
};

/** Runs in the page: one picture as the camera sees it, a byte of grey a pixel. */
async function greys({ png, width, height, hand }: Asked): Promise<string> {
  const bytes = Uint8Array.from(atob(png), (c) => c.charCodeAt(0));
  const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
  const context = new OffscreenCanvas(width, height).getContext('2d');
  if (!context) return '';
  context.fillStyle = '#8a7a60';
  context.fillRect(0, 0, width, height);
  context.filter = `blur(${hand.blur}px)`;
  context.translate(width / 2, height / 2);
  context.rotate((hand.turn * Math.PI) / 180);
  const side = height * 0.82;
  context.drawImage(picture, -side / 2, -side / 2, side, (side * picture.height) / picture.width);
  const { data } = context.getImageData(0, 0, width, height);
  let text = '';
  for (let k = 0; k < data.length; k += 4) {
    const grey = ((data[k] ?? 0) + (data[k + 1] ?? 0) + (data[k + 2] ?? 0)) / 3;
    const seen = 30 + grey * 0.75 + (Math.random() - 0.5) * hand.grain;
    text += String.fromCharCode(Math.max(0, Math.min(255, Math.round(seen))));
  }
  return btoa(text);
}
