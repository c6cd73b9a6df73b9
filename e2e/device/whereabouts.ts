/** Where the phone is, and whether its browser may say so. */
import type { Page } from '@playwright/test';

/** Degrees north and degrees east. */
export interface Whereabouts {
  readonly latitude: number;
  readonly longitude: number;
}

/** The person said yes, and the phone finds itself there. */
export async function phoneIsAt(page: Page, place: Whereabouts): Promise<void> {
  await page.context().setGeolocation(place);
  await page.context().grantPermissions(['geolocation']);
}

/** The person said no. Granting nothing refuses everything, so that no question is left open. */
export async function phoneKeepsItsPlace(page: Page): Promise<void> {
  await page.context().clearPermissions();
  await page.context().grantPermissions([]);
}
