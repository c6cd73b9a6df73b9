/** Weighbridge day: every animal of the yard on a scale, line by line, with the keyboard, and a trailer on a weighbridge. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records, rows } from '../../device/database.ts';
import { button, choice, field, link, type Hands, sentence, words } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal } from '../../models/animals.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

const names = ['Bramble', 'Fern', 'Moss', 'Sorrel'];
const day = 24 * 60 * 60_000;

async function haveFour(hands: Hands): Promise<void> {
  for (const name of names) {
    await hands.open(newAnimalForm);
    await fillIn(hands, { name, kind: 'Pony', height: '128', born: '2012' });
    await saveAnimal(hands, name);
  }
}

test('four ponies are weighed line by line, broken off, asked back, taken back and finished', async ({ hands, page, holds }) => {
  test.setTimeout(180_000);
  await wakeAt(page, dawn);
  await haveFour(hands);
  await hands.open('#/horses');
  await hands.tap(link('Weigh them all'));
  await hands.see(sentence('0 of 4 weighed today'));
  await holds('weighbridge-day');

  // Enter leads to the next line, and the one that was left is saved.
  await hands.type(field('Bramble'), '301');
  await page.keyboard.press('Enter');
  await hands.see(sentence('1 of 4 weighed today'));
  await hands.see(words('saved: 301 kg'));
  expect(await page.evaluate(() => document.activeElement?.closest('tr')?.textContent)).toContain('Fern');
  // As is one that is left with a finger on another.
  await hands.type(field('Fern'), '298');
  await hands.type(field('Sorrel'), '660');
  await hands.see(sentence('2 of 4 weighed today'));
  expect(await records(page, 'weight'), 'a record for each').toHaveLength(2);

  // The page is gone in the middle of a line.
  await expect.poll(async () => JSON.stringify(await rows(page, 'drafts'))).toContain('660');
  await hands.open('#/horses/weighbridge');
  await hands.see(sentence('2 of 4 weighed today'));
  await expect.poll(() => hands.see(field('Sorrel'))).toBe('660');
  await hands.see(words('As you left it at'));

  // What is not usual holds up its own line alone.
  await hands.tap(button('Finish weighing'));
  await hands.see(words('660 kg: was that in pounds?'));
  await hands.see(words(/^A line is not saved yet/));
  await holds('weighbridge-asked');
  await hands.type(field('Moss'), 'heavy');
  await page.keyboard.press('Enter');
  await hands.see(words(/heavy/));
  await hands.tap(button('It was pounds'));
  await hands.see(sentence('3 of 4 weighed today'));
  await hands.see(words('saved: 299 kg'));
  await holds('weighbridge-wrong');

  // The last one is taken back, and typed again.
  await hands.tap(button('Undo'));
  await hands.see(sentence('2 of 4 weighed today'));
  await hands.type(field('Sorrel'), '299');
  await page.keyboard.press('Enter');
  await hands.see(sentence('3 of 4 weighed today'));
  await hands.tap(field('Moss'));
  await page.keyboard.press('ControlOrMeta+a');
  await hands.type(field('Moss'), '310');
  await hands.tap(button('Finish weighing'));
  await hands.see(link(/^Moss.*310 kg/));
  await expect.poll(() => rows(page, 'drafts'), 'each was cleared by its save').toEqual([]);

  // A month later they stand as they were walked, each beside what it weighed.
  await wakeAt(page, new Date(dawn.getTime() + 28 * day));
  await hands.open('#/horses/weighbridge');
  await hands.see(sentence('0 of 4 weighed today'));
  await hands.see(words(/^301 kg, /));
});

test('a vehicle weighbridge: the trailer is weighed once, and the difference is the animal', async ({ hands, page, holds }) => {
  test.setTimeout(120_000);
  await haveFour(hands);
  await hands.open('#/horses/weighbridge');
  await hands.see(sentence('0 of 4 weighed today'));
  await hands.tap(choice('Vehicle weighbridge'));
  await hands.type(field('Trailer without it'), '2460');
  await hands.type(field('Bramble'), '2760');
  await hands.see(words('300 kg'));
  await page.keyboard.press('Enter');
  await hands.see(words('saved: 300 kg'));
  await holds('weighbridge-vehicle');
  // The other way round is no weight.
  await hands.type(field('Fern'), '2400');
  await page.keyboard.press('Enter');
  await hands.see(words(/^With the animal it must be heavier/));
  expect(await records(page, 'weight')).toHaveLength(1);

  // Both are remembered from what was saved.
  await hands.open('#/horses/weighbridge');
  await expect.poll(() => readSentence(hands)).toBe('1 of 4 weighed today');
  await expect.poll(() => hands.see(field('Trailer without it'))).toBe('2460');
  const kept = JSON.stringify(await records(page, 'weight'));
  expect(kept).toContain('"vehicle_weighbridge"');
  expect(kept).toContain('"2760"');
});

test('at a desk the lines are typed down with the keyboard alone', async ({ hands, page }) => {
  await haveFour(hands);
  await page.setViewportSize({ width: 1280, height: 800 });
  await hands.open('#/horses/weighbridge');
  await hands.see(sentence('0 of 4 weighed today'));
  await hands.tap(field('Bramble'));
  for (const weight of ['301', '302', '303', '304']) {
    await page.keyboard.type(weight);
    await page.keyboard.press('Enter');
  }
  await hands.see(sentence('4 of 4 weighed today'));
  expect(await records(page, 'weight')).toHaveLength(4);
});
