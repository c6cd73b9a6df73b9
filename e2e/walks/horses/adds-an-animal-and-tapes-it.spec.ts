/** The first thing anybody does: write an animal down and put a tape round it. */
import { focusFaults } from '../../checks/focus.ts';
import { records, rows } from '../../device/database.ts';
import { canRefuse, refuseNextWrite } from '../../device/faults.ts';
import { firstVisitIsOver } from '../../device/worker.ts';
import { button, field, link, words } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal, tape } from '../../models/animals.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

const bramble = { name: 'Bramble', kind: 'Pony', height: '12.2 hh', born: '2014' } as const;
const weight = /^Bramble: \d+ kg, give or take \d+ kg$/;

test('from an empty yard to a weight with its band', async ({ transactions, hands, page, holds }) => {
  await hands.open('#/horses');
  await readSentence(hands);
  await hands.tap(link('Add an animal'));
  await hands.see(field('Name'));
  await holds('new-animal');
  await fillIn(hands, bramble);
  await saveAnimal(hands, bramble.name);
  await holds('weigh');
  expect(await tape(hands, '152', '160')).toMatch(weight);
  await hands.see(words('Saved.'));
  await holds('beside-one-animal');

  await hands.open('#/horses');
  expect(await readSentence(hands)).toBe('Score Bramble today');
  await hands.see(link(/^Bramble/));
  await holds('horses');

  expect(await records(page, 'animal')).toHaveLength(1);
  const writes = transactions.filter(({ mode, stores }) => mode === 'readwrite' && stores.includes('records'));
  expect(writes.length, 'the animal and its weight').toBe(2);
  expect(writes.filter(({ durability }) => durability !== 'strict')).toEqual([]);
});

test('what was left out or cannot be read is said beside its field, and nothing is stored', async ({ hands, page, holds }) => {
  await hands.open(newAnimalForm);
  await hands.type(field('Height at the withers'), '14.7 hh');
  await hands.tap(button('Save, then weigh'));
  await hands.see(words('Type a name'));
  await hands.see(words('Choose one'));
  await hands.see(words(/14\.7 hh.*hands/));
  await holds('new-animal-wrong');
  expect(await focusFaults(page)).toEqual([]);
  expect(await rows(page, 'records')).toEqual([]);
});

test('a weight is taken back within ten seconds', async ({ hands, page }) => {
  await hands.open(newAnimalForm);
  await fillIn(hands, bramble);
  await saveAnimal(hands, bramble.name);
  expect(await tape(hands, '152')).toMatch(weight);
  await hands.tap(button('Undo'));
  await expect.poll(() => readSentence(hands)).toBe('Bramble was never weighed');
  const weights = (await rows(page, 'records')).filter((row) => row['kind'] === 'weight');
  expect(weights, 'the record stays, marked').toHaveLength(1);
});

test('when the disk refuses, the form stays filled and says so, and the second try saves', async ({ context, hands, page }) => {
  await canRefuse(context);
  await hands.open(newAnimalForm);
  await fillIn(hands, bramble);
  // The draft's own write must not be the one that is refused.
  await expect.poll(async () => JSON.stringify(await rows(page, 'drafts'))).toContain('2014');
  await refuseNextWrite(page);
  await hands.tap(button('Save, then weigh'));
  await hands.see(words('Not saved.'));
  expect(await hands.count(words(/^Saved\./))).toBe(0);
  expect(await hands.see(field('Name'))).toBe('Bramble');
  expect(await rows(page, 'records')).toEqual([]);
  await readBeforeAgain(page);
  await saveAnimal(hands, bramble.name);
  expect(await records(page, 'animal')).toHaveLength(1);
});

test('what is added in one tab stands in the other', async ({ hands, page, context, host }) => {
  await hands.open('#/horses');
  await readSentence(hands);
  const { PlaywrightHands } = await import('../../hands/playwright.ts');
  const second = await context.newPage();
  const other = new PlaywrightHands({ page: second, home: () => host.home, finger: true });
  await other.open(newAnimalForm);
  await fillIn(other, bramble);
  await saveAnimal(other, bramble.name);
  await page.bringToFront();
  await expect.poll(() => readSentence(hands)).toBe('Weigh Bramble today');
});

for (const how of ['put away', 'killed'] as const) {
  test(`typed, ${how}, offline: the form comes back, and what was saved is there`, async ({ pocket, host, watch }) => {
    watch.tolerates(/sw\.js|ERR_CONNECTION_REFUSED|fetching the script/, 'the browser may look for a newer worker in vain');
    const first = await pocket.takeOut();
    await first.hands.open(newAnimalForm);
    await firstVisitIsOver(first.page);
    await host.stop();
    await fillIn(first.hands, bramble);
    await saveAnimal(first.hands, bramble.name);
    const form = new URL(first.page.url()).hash;
    await first.hands.type(field('Heart girth'), '15');
    await expect.poll(async () => JSON.stringify(await rows(first.page, 'drafts'))).toContain('"15');
    if (how === 'killed') await pocket.kill();
    else await pocket.putAway();

    const second = await pocket.takeOut();
    await second.hands.open(form);
    await second.hands.see(words('As you left it at'));
    expect(await second.hands.see(field('Heart girth'))).toBe('15');
    expect(await tape(second.hands, '2')).toMatch(weight);
    expect(await rows(second.page, 'drafts'), 'cleared by the save').toEqual([]);
    expect(await records(second.page, 'animal')).toHaveLength(1);
  });
}
