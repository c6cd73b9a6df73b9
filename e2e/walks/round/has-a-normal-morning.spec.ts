/**
 * A normal morning with three animals, counted: practice.md section 4 allows twelve touches and no digit for six nets
 * and two tubs. And what is left of three days on which nobody answered.
 */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, field, type Hands, link, sentence, words } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { bramble, haveAPlan } from '../../models/start.ts';
import { liftOutBothTubs, startBothTubs } from '../../models/tubs.ts';
import { expect, test } from '../../walk.ts';

/** So many minutes after dawn. */
const after = (minutes: number): Date => new Date(dawn.getTime() + minutes * 60_000);

/** Three animals of one hay, and two tubs, each of which takes two of their three morning nets. */
async function threeAnimalsAndTwoTubs(hands: Hands): Promise<void> {
  for (const name of ['Bramble', 'Moss', 'Fern']) await haveAPlan(hands, { ...bramble, name });
  for (const name of ['Tub 1', 'Tub 2']) {
    await hands.open('#/shed/tubs/new');
    await hands.type(field('Name'), name);
    await hands.type(field('How much hay it holds, dry'), '5');
    await hands.tap(button('Save the tub'));
    await hands.see(sentence(/to start$/));
  }
}

test('six nets and two tubs in twelve touches and no digit', async ({ hands, page, holds }) => {
  test.setTimeout(240_000);
  await wakeAt(page, dawn);
  await threeAnimalsAndTwoTubs(hands);
  await hands.open('#/round');
  expect(await readSentence(hands)).toMatch(/^\d+ due/);
  await holds('round-of-three');
  hands.touches.reset();

  // The nets.
  await hands.tap(link('Shed'));
  await hands.tap(link('Weigh nets'));
  await hands.tap(button('All 6 filled to target'));
  await hands.see(sentence('All nets are filled today'));

  // Both tubs go into the water.
  await hands.tap(link('Back'));
  await startBothTubs(hands);
  // Two animals' hay in the one tub, one's in the other: each has its own entry.
  expect(await records(page, 'soak_step')).toHaveLength(3);

  // They are lifted out in time.
  await wakeAt(page, after(61));
  await liftOutBothTubs(hands, page);

  // At seven everything hangs as planned.
  await wakeAt(page, after(76));
  await hands.open('#/round');
  await hands.tap(button('All as planned for 07:00'));
  await expect.poll(async () => (await records(page, 'net_hung')).length).toBe(3);
  expect(hands.touches.taps, 'touches of a normal morning').toBeLessThanOrEqual(12);
  expect(hands.touches.digits).toBe(0);
  await hands.see(words(/done today/));
});

test('three days on which nobody answered are one card, and what is really open stays', async ({ hands, page, holds }) => {
  test.setTimeout(240_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await haveAPlan(hands, { ...bramble, name: 'Moss' });
  await hands.open('#/shed/soaks');
  await hands.tap(button(/^Start a new tub/));
  await expect.poll(async () => (await records(page, 'soak_step')).length).toBe(2);

  await wakeAt(page, after(3 * 24 * 60));
  await hands.open('#/round');
  // On Tuesday hay was put into the water; the tub that was left then is what stays, to be thrown away first.
  await hands.see(words('Wed 6 May to Thu 7 May not logged'));
  expect(await hands.count(button(/^Done: throw away/))).toBe(2);
  await hands.see(button('Thrown away'));
  await hands.see(sentence(/late|due/));
  await holds('round-days-away');
  hands.touches.reset();
  await hands.tap(button('As planned'));
  await expect.poll(() => hands.count(words('Wed 6 May to Thu 7 May not logged'))).toBe(0);
  expect(hands.touches.taps).toBe(1);
  // It can be taken back.
  await hands.tap(button('Undo'));
  await hands.see(words('Wed 6 May to Thu 7 May not logged'));
});
