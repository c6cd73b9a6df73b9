/** A newer build is offered in words on the places, waits while a form holds what is not saved, and is taken by one tap. */
import { firstVisitIsOver, newWorkerWaits } from '../../device/worker.ts';
import { rows } from '../../device/database.ts';
import { button, field, link, sentence, words } from '../../hands/hands.ts';
import { nextRelease } from '../../host/deploys.ts';
import { fillIn, saveAnimal } from '../../models/animals.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

test('offered on the list, not over a draft, taken when asked', async ({ hands, host, page, holds }) => {
  const offer = words('A newer version is here.');
  await hands.open('#/horses');
  await readSentence(hands);
  await firstVisitIsOver(page);
  await hands.tap(link('Add an animal'));
  await hands.type(field('Name'), 'Bram');
  await expect.poll(async () => JSON.stringify(await rows(page, 'drafts'))).toContain('Bram');

  await host.deploy(await nextRelease());
  await newWorkerWaits(page);
  await hands.tap(link('Back'));
  await hands.see(sentence(/no animal|No animal|yet/));
  expect(await hands.count(offer), 'a draft stands').toBe(0);

  await hands.tap(link('Add an animal'));
  await hands.see(words('As you left it at'));
  await fillIn(hands, { name: 'ble', kind: 'Pony' });
  await saveAnimal(hands, 'Bramble');
  await hands.tap(link('Back'));
  await hands.tap(link('Back'));
  await hands.see(offer);
  await holds('update-offered');

  const reloaded = page.waitForEvent('load');
  await hands.tap(button('Use it now'));
  await reloaded;
  await readSentence(hands);
  expect(await hands.count(offer)).toBe(0);
  expect(JSON.stringify(await rows(page, 'records'))).toContain('Bramble');
});
