/**
 * The owner's morning: a plan, two nets on the scale, a tub of hay, all with no signal, the phone put away in the middle,
 * and what is left in the net thrown away twelve hours after it was first wet.
 */
import { records } from '../../device/database.ts';
import { dawn, sleepFor, wakeAt } from '../../device/clock.ts';
import { firstVisitIsOver } from '../../device/worker.ts';
import { button, field, link, sentence, words } from '../../hands/hands.ts';
import { answer, bramble, takePlan } from '../../models/start.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

/** "at 06:45. It is 05:45." under the large figures. */
const byTheClock = words(/^at \d\d:\d\d\. It is \d\d:\d\d\.$/);

test('the whole morning with the server stopped, a restart in the middle of the soak, and twelve hours on', async ({ pocket, host, watch }) => {
  test.setTimeout(180_000);
  watch.tolerates(/sw\.js|ERR_CONNECTION_REFUSED|fetching the script/, 'the browser may look for a newer worker in vain');
  const first = await pocket.takeOut();
  await wakeAt(first.page, dawn);
  await first.hands.open('');
  await first.hands.see(link('Start'));
  await firstVisitIsOver(first.page);
  await host.stop();

  // A first plan.
  await first.hands.tap(link('Start'));
  await answer(first.hands, bramble);
  await takePlan(first.hands);

  // The nets.
  await first.hands.open('#/shed');
  expect(await readSentence(first.hands)).toBe('2 nets to weigh for today');
  await first.hands.tap(link('Weigh nets'));
  await first.hands.see(words('Hang until the scale reads'));
  await first.hands.type(field('Hang until the scale reads'), '3.1');
  first.hands.touches.reset();
  await first.hands.tap(button('Save, next net'));
  // practice.md section 4: two touches after the reading.
  expect(first.hands.touches.taps).toBeLessThanOrEqual(2);
  await first.hands.see(words(/^1 of 2 weighed/));
  await first.hands.tap(button('Filled to target'));
  await first.hands.see(sentence("Bramble's nets are filled today"));

  // The soak.
  await first.hands.open('#/shed/tub/new');
  await first.hands.tap(button('Start the soak'));
  await first.hands.see(words('Lift out in'));
  const tub = new URL(first.page.url()).hash;
  const before = await first.hands.see(byTheClock);
  expect(before).toMatch(/It is 05:4\d\.$/);
  await first.holds('tub-in-water');

  // The phone is put away for twenty minutes.
  await pocket.putAway();
  const second = await pocket.takeOut();
  await wakeAt(second.page, new Date(dawn.getTime() + 20 * 60_000));
  await second.hands.open(tub);
  await second.hands.see(words('Lift out in'));
  const after = await second.hands.see(byTheClock);
  expect(after.slice(0, 9), 'lifted out at the same time').toBe(before.slice(0, 9));
  expect(after).toMatch(/It is 06:0\d\.$/);

  await sleepFor(second.page, 45);
  await second.hands.see(words(/^Lift out now/));
  await second.hands.tap(button('Lifted out now'));
  await second.hands.see(words('Drained in'));
  await sleepFor(second.page, 20);
  await second.hands.see(words(/^Feed it now/));
  await second.hands.tap(button('Drained and fed'));
  await second.hands.see(words(/^Fed\. Throw away what is left in/));

  // Twelve hours after it was first wet (practice.md rule 9).
  await wakeAt(second.page, new Date(dawn.getTime() + (12 * 60 - 1) * 60_000));
  await second.hands.see(words(/^Fed\. Throw away what is left in/));
  await wakeAt(second.page, new Date(dawn.getTime() + (12 * 60 + 10) * 60_000));
  await second.hands.see(sentence(/^Throw away/));
  await second.holds('tub-throw-away');
  await second.hands.open('#/round');
  expect(await readSentence(second.hands)).toMatch(/late|due/);
  await second.hands.open(tub);
  await second.hands.tap(button('Thrown away'));
  await expect.poll(() => readSentence(second.hands)).toMatch(/^Thrown away/);

  expect(await records(second.page, 'net_filled')).toHaveLength(2);
  expect(await records(second.page, 'plan')).toHaveLength(1);
});
