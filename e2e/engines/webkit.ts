/** WebKit, driven over WebDriver in a window that nobody sees. */
import { type ChildProcess, spawn } from 'node:child_process';
import { Builder, Capabilities, WebElement } from 'selenium-webdriver';
import { freePort } from '../host/port.ts';
import { phoneSize } from '../house/phone.ts';
import { miniBrowser, webkitDriver, xvfb } from '../house/settings.ts';
import type { Driver } from './driven.ts';
import type { Engine } from './engine.ts';

/** How long the driver may take to answer, in milliseconds. */
const PATIENCE = 15_000;

/** A display of its own, and its name: the server says it on the third channel once it is there. */
async function display(): Promise<{ server: ChildProcess; name: string }> {
  const server = spawn(xvfb, ['-displayfd', '3', '-screen', '0', '800x1000x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const name = await new Promise<string>((resolve, reject) => {
    server.once('error', reject);
    server.once('exit', (code) => reject(new Error(`${xvfb} ended with ${String(code)}`)));
    const told = server.stdio[3];
    told?.on('data', (data: Buffer) => resolve(`:${data.toString().trim()}`));
  });
  return { server, name };
}

async function answers(address: string): Promise<void> {
  const end = Date.now() + PATIENCE;
  for (;;) {
    const up = await fetch(`${address}/status`).then(
      (response) => response.ok,
      () => false,
    );
    if (up) return;
    if (Date.now() > end) throw new Error(`${webkitDriver} does not answer at ${address}`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}

/** Starts WebKit with a window as wide as a phone. */
export async function startWebkit(): Promise<Engine> {
  const screen = await display();
  const port = await freePort();
  const service = spawn(webkitDriver, [`--port=${port}`], {
    stdio: 'ignore',
    // Its own sandbox asks for user namespaces, which a container does not have.
    env: { ...process.env, DISPLAY: screen.name, WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1', NO_AT_BRIDGE: '1' },
  });
  const stop = async (): Promise<void> => {
    service.kill('SIGKILL');
    screen.server.kill('SIGKILL');
  };
  try {
    const address = `http://127.0.0.1:${port}`;
    await answers(address);
    const browser = await new Builder()
      .usingServer(address)
      .withCapabilities(
        new Capabilities({
          browserName: 'MiniBrowser',
          'webkitgtk:browserOptions': { binary: miniBrowser, args: ['--automation'] },
        }),
      )
      .build();
    await browser.manage().window().setRect({ x: 0, y: 0, ...phoneSize });
    const driver: Driver<WebElement> = {
      name: 'webkit',
      go: (to) => browser.get(to),
      value: (expression) => browser.executeScript(`return ${expression}`),
      element: async (expression) => (await browser.executeScript<WebElement | null>(`return ${expression}`)) ?? null,
      touch: (element) => element.click(),
      keys: (element, text) => element.sendKeys(text),
      picture: async () => Buffer.from(await browser.takeScreenshot(), 'base64'),
    };
    const end = async (): Promise<void> => {
      await browser.quit().catch(() => undefined);
      await stop();
    };
    // WebDriver tells nothing of the console.
    return { driver, faults: () => [], end };
  } catch (error) {
    await stop();
    throw error;
  }
}
