import { defineConfig } from '@playwright/test';
import { join } from 'node:path';
import { launch, phone } from './house/phone.ts';
import { demandSettings, engines, everything, out } from './house/settings.ts';
import type { Place } from './walk.ts';

demandSettings();

export default defineConfig<Place>({
  testDir: './walks',
  outputDir: join(out, 'results'),
  fullyParallel: true,
  workers: Number(process.env['TUSSOCK_WORKERS'] ?? '2'),
  retries: 0,
  forbidOnly: true,
  // A walk is slow only where the machine is busy; a red one costs its patience once.
  timeout: 120_000,
  expect: { timeout: 15_000 },
  reporter: [['./house/counts.ts']],
  use: {
    ...phone,
    browserName: 'chromium',
    launchOptions: launch,
    serviceWorkers: 'allow',
    actionTimeout: 15_000,
    navigationTimeout: 30_000,
    screenshot: 'only-on-failure',
    trace: 'retain-on-failure',
  },
  projects: [
    { name: 'phone', use: { at: '/' }, testIgnore: '**/engines/**' },
    {
      name: 'sub-path',
      use: { at: '/sub/path/' },
      testIgnore: '**/engines/**',
      ...(everything ? {} : { testMatch: '**/delivery/**' }),
    },
    ...engines.map((engine) => ({ name: engine, testMatch: '**/engines/**', use: { at: '/', engine } })),
  ],
});
