/** Photographs: made as files for a walk, handed to the app's own chooser, and read back from the disk and the screen. */
import { expect, type BrowserContext, type Page } from '@playwright/test';
import { createHash } from 'node:crypto';
import { mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** What a drawn file shows. */
export interface Drawn {
  readonly width: number;
  readonly height: number;
  /** Another number draws another picture. */
  readonly seed: number;
  /** Every point another colour, which no packing makes small. */
  readonly noise?: boolean;
}

/** A JPEG, as the page's own browser packs it at its best. */
export async function drawn(page: Page, what: Drawn): Promise<Buffer> {
  const base64 = await page.evaluate(async ({ width, height, seed, noise }) => {
    const canvas = new OffscreenCanvas(width, height);
    const context = canvas.getContext('2d');
    if (context === null) throw new Error('no canvas');
    const sky = context.createLinearGradient(0, 0, width, height);
    sky.addColorStop(0, `hsl(${(seed * 47) % 360} 60% 70%)`);
    sky.addColorStop(1, `hsl(${(seed * 47 + 90) % 360} 60% 30%)`);
    context.fillStyle = sky;
    context.fillRect(0, 0, width, height);
    if (noise) {
      const points = context.getImageData(0, 0, width, height);
      let state = seed + 1;
      for (let at = 0; at < points.data.length; at += 1) {
        state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
        if (at % 4 !== 3) points.data[at] = state >>> 24;
      }
      context.putImageData(points, 0, 0);
    }
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 });
    const bytes = new Uint8Array(await blob.arrayBuffer());
    let text = '';
    for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
    return btoa(text);
  }, { noise: false, ...what });
  return Buffer.from(base64, 'base64');
}

/** What a camera writes beside the picture: where it was taken, and that it was held on its side (6: turned right). */
export function toldByCamera(jpeg: Buffer, where: string, orientation: 1 | 6): Buffer {
  // A TIFF with one entry, the orientation, and the words behind it.
  const tiff = Buffer.from([0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0]);
  const held = Buffer.concat([Buffer.from('Exif\0\0'), tiff, Buffer.from(where)]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(held.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, held, jpeg.subarray(2)]);
}

/** The segments of a JPEG up to its first scan: marker and content. */
export function segmentsOf(jpeg: Buffer): { marker: number; held: Buffer }[] {
  const found: { marker: number; held: Buffer }[] = [];
  let at = 2;
  while (at + 4 <= jpeg.length) {
    const marker = jpeg[at + 1] ?? 0;
    const length = jpeg.readUInt16BE(at + 2);
    found.push({ marker, held: jpeg.subarray(at + 4, at + 2 + length) });
    if (marker === 0xda) break;
    at += 2 + length;
  }
  return found;
}

/** Width and height, as the frame of a JPEG says. */
export function sizeOf(jpeg: Buffer): { width: number; height: number } {
  const frame = segmentsOf(jpeg).find(({ marker }) => marker >= 0xc0 && marker <= 0xc2);
  if (frame === undefined) throw new Error('no frame');
  return { height: frame.held.readUInt16BE(1), width: frame.held.readUInt16BE(3) };
}

/** Hands over files when the app opens a chooser: the phone's camera or its pictures. */
export class Chooser {
  private next: string | undefined;
  private count = 0;

  constructor(
    page: Page,
    private readonly folder: string,
  ) {
    mkdirSync(folder, { recursive: true });
    page.on('filechooser', (chooser) => {
      const file = this.next;
      this.next = undefined;
      if (file !== undefined) void chooser.setFiles(file);
    });
  }

  /** The file that the next chooser gives, made at a time. */
  gives(bytes: Buffer, made: Date, name = 'photograph.jpg'): void {
    this.count += 1;
    const file = join(this.folder, `${this.count}-${name}`);
    writeFileSync(file, bytes);
    utimesSync(file, made, made);
    this.next = file;
  }
}

/** A picture as it lies on the disk. */
export interface Kept {
  /** The key it lies under. */
  readonly sha256: string;
  /** The sum of its bytes, worked out here. */
  readonly found: string;
  /** What the browser gave: `ArrayBuffer` and nothing else. */
  readonly kind: string;
  readonly bytes: Buffer;
}

/** Every picture of a database. */
export async function pictures(page: Page, database = 'tussock'): Promise<Kept[]> {
  const rows = await page.evaluate(async (name) => {
    const opened = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(name);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    const all = await new Promise<{ sha256: string; bytes: ArrayBuffer }[]>((resolve, reject) => {
      const request = opened.transaction('pictures').objectStore('pictures').getAll();
      request.onsuccess = () => resolve(request.result as { sha256: string; bytes: ArrayBuffer }[]);
      request.onerror = () => reject(request.error);
    });
    opened.close();
    return all.map(({ sha256, bytes }) => {
      const view = new Uint8Array(bytes);
      let text = '';
      for (let at = 0; at < view.length; at += 0x8000) text += String.fromCharCode(...view.subarray(at, at + 0x8000));
      return { sha256, kind: bytes.constructor.name, base64: btoa(text) };
    });
  }, database);
  return rows.map(({ sha256, kind, base64 }) => {
    const bytes = Buffer.from(base64, 'base64');
    return { sha256, kind, bytes, found: createHash('sha256').update(bytes).digest('hex') };
  });
}

/** A picture on the screen. */
export interface OnScreen {
  readonly alt: string;
  /** Points across; 0 while it is not there. */
  readonly across: number;
}

/** The pictures of the screen in sight, after each was scrolled to; waits until all are drawn. */
export async function onScreen(page: Page): Promise<OnScreen[]> {
  let seen: OnScreen[] = [];
  await expect
    .poll(
      async () => {
        seen = await page.evaluate(async () => {
          const frame = (): Promise<unknown> => new Promise((done) => requestAnimationFrame(done));
          const found: { alt: string; across: number }[] = [];
          for (const image of document.images) {
            image.scrollIntoView({ block: 'center' });
            await frame();
            found.push({ alt: image.alt, across: image.complete ? image.naturalWidth : 0 });
          }
          window.scrollTo(0, 0);
          return found;
        });
        return seen.length > 0 && seen.every(({ across }) => across > 0);
      },
      { message: 'every picture is drawn' },
    )
    .toBe(true);
  return seen;
}

/** Adds up how far each page of this window jumps by itself: layout shifts that no touch caused. */
export async function watchJumps(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const told = window as unknown as { walkJumped: number };
    told.walkJumped = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as unknown as { value: number; hadRecentInput: boolean }[]) {
        if (!entry.hadRecentInput) told.walkJumped += entry.value;
      }
    }).observe({ type: 'layout-shift', buffered: true });
  });
}

/** How far the page in sight jumped so far. */
export async function jumped(page: Page): Promise<number> {
  return page.evaluate(() => (window as unknown as { walkJumped: number }).walkJumped);
}

/** What a page meets that asks for the camera: a picture that is drawn, a no, or nothing. Call it before the page opens. */
export async function hasCamera(context: BrowserContext, answer: 'gives' | 'refuses' | 'none'): Promise<void> {
  await context.addInitScript((given) => {
    if (!window.isSecureContext || location.protocol === 'about:') return;
    const told = window as unknown as { walkTracks: MediaStreamTrack[]; walkAsked: number };
    told.walkTracks = [];
    told.walkAsked = 0;
    const ask = async (): Promise<MediaStream> => {
      told.walkAsked += 1;
      if (given === 'refuses') throw new DOMException('no', 'NotAllowedError');
      const canvas = document.createElement('canvas');
      canvas.width = 1280;
      canvas.height = 720;
      const context2d = canvas.getContext('2d');
      if (context2d === null) throw new DOMException('no canvas', 'NotReadableError');
      let turn = 0;
      const draw = (): void => {
        turn += 1;
        context2d.fillStyle = `hsl(${turn % 360} 50% 50%)`;
        context2d.fillRect(0, 0, 1280, 720);
        requestAnimationFrame(draw);
      };
      draw();
      const stream = canvas.captureStream();
      told.walkTracks.push(...stream.getTracks());
      return stream;
    };
    Object.defineProperty(navigator, 'mediaDevices', { value: given === 'none' ? undefined : { getUserMedia: ask } });
  }, answer);
}

/** How often the camera was asked for, and how many of its tracks still run. */
export async function cameraOf(page: Page): Promise<{ asked: number; running: number }> {
  return page.evaluate(() => {
    const told = window as unknown as { walkTracks: MediaStreamTrack[]; walkAsked: number };
    return { asked: told.walkAsked, running: told.walkTracks.filter(({ readyState }) => readyState === 'live').length };
  });
}
