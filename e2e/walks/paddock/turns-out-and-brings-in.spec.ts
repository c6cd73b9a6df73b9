/** An animal that goes out and comes in, what is written of it, and a time that is corrected. */
import { dawn, sleepFor, wakeAt } from '../../device/clock.ts';
import { markAll } from '../../device/keys.ts';
import { button, field, sentence, words } from '../../hands/hands.ts';
import { flushIsOver, haveATestedHorse, say } from '../../models/paddock.ts';
import { readSentence } from '../../models/screen.ts';
import { test } from '../../walk.ts';

test('what went out is brought in by the hour that grass closes, and both are in the log', async ({ hands, page, holds }) => {
  test.setTimeout(180_000);
  await wakeAt(page, dawn);
  await haveATestedHorse(hands, page);
  await flushIsOver(hands);
  await say(hands, 'Night over 5 °C');
  await hands.see(sentence('Grass is open until 09:00'));
  await hands.tap(button('Turn out Fern'));
  await hands.see(sentence('Bring in Fern by 09:00'));
  await hands.see(words(/^Out since 05:45\. In by 09:00: grass closes\./));
  await holds('paddock-out');

  await sleepFor(page, 4 * 60);
  await hands.see(sentence('Bring in Fern now'));
  await holds('paddock-late');
  await hands.tap(button('Bring in Fern'));
  await hands.see(sentence('Grass closed at 09:00'));
  await hands.see(words(/05:45 to 09:45/));

  await hands.tap(button(/05:45 to 09:45/));
  await hands.tap(field('Came in at; empty while it is out'));
  await markAll(page);
  await hands.type(field('Came in at; empty while it is out'), '8:50');
  await hands.tap(button('Save'));
  await hands.see(words(/05:45 to 08:50/));
  await holds('paddock-log');

  // Undo takes the last of it back.
  await hands.tap(button('Undo'));
  await hands.see(words(/05:45 to 09:45/));
  await readSentence(hands);

  // What never was is taken away, and comes back.
  await hands.tap(button(/05:45 to 09:45/));
  await hands.tap(button('It was not out'));
  await hands.see(words('None written down yet'));
  await hands.tap(button('Undo'));
  await hands.see(words(/05:45 to 09:45/));
});
