/** What closes grass and what opens it: the season, the night and the sky; the week; and all of it with no location and no signal. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { firstVisitIsOver } from '../../device/worker.ts';
import { button, link, sentence, thing, words } from '../../hands/hands.ts';
import { flushIsOver, haveATestedHorse, say } from '../../models/paddock.ts';
import { readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('one at risk waits for the season and the night, and is told what to do instead', async ({ hands, page, holds }) => {
  test.setTimeout(240_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open('#/paddock');
  await hands.see(sentence('No grass today'));
  // Every reason stands there, and what to do instead.
  await hands.see(words('Say where the yard lies, or that the flush is over.'));
  await hands.see(words(/^Say what the night was$/));
  await hands.see(words(/hay split over more visits/));
  await holds('paddock-closed');

  await flushIsOver(hands);
  await say(hands, 'Night 5 °C or under');
  await hands.see(sentence('No grass today'));
  await hands.see(words(/^The night was at 5 °C or under\.$/));
  // Once the night is said it is one line, and what closes it then is that its plan has no grass.
  await hands.tap(button('Change the weather'));
  await say(hands, 'Night over 5 °C');
  await hands.see(sentence('No grass today'));
  await hands.see(words(/^Its plan has no grass\.$/));
  await hands.see(link('Say how Bramble goes out'));
  await hands.see(button('It is out already: write it down'));
});

test('one that is only fat has grass until the clock or the sky closes it', async ({ hands, page, holds }) => {
  test.setTimeout(240_000);
  await wakeAt(page, dawn);
  await haveATestedHorse(hands, page);
  await flushIsOver(hands);
  await say(hands, 'Night over 5 °C');
  await hands.see(sentence('Grass is open until 09:00'));
  await hands.see(words('Nothing here makes grass a small risk.'));
  await hands.tap(button('Change the weather'));
  await say(hands, 'Dull');
  await hands.see(sentence('Grass is open until 11:00'));
  await hands.see(thing('img', /^The day from 04:00 to 22:00: grass is open/));
  await hands.tap(words('All numbers'));
  await hands.see(thing('table', 'The day, by the clock of the yard'));
  await holds('paddock-open');

  await hands.tap(link('Week'));
  await hands.see(sentence('Fern: grass this week'));
  const week = thing('list', 'Week');
  expect(await hands.count(thing('listitem', undefined, week))).toBe(7);
  await holds('paddock-week');
  await hands.open('#/paddock/season');
  expect(await readSentence(hands)).toBe('The season is not known here');
  await holds('paddock-season');
});

test('the invented yard knows its place, and its grass is drawn with the sun', async ({ hands, holds }) => {
  test.setTimeout(120_000);
  await hands.open('#/example');
  await readSentence(hands);
  await hands.tap(link('Paddock'));
  await readSentence(hands);
  await hands.see(thing('img', /sunrise \d\d:\d\d, sunset \d\d:\d\d$/));
  await hands.see(words(/2 to 3 points over the day/));
  await holds('paddock-example');
  await hands.tap(link('Season'));
  await readSentence(hands);
  await hands.see(thing('img', /^The year of grass: /));
  await holds('paddock-example-season');
});

test('without signal and without a place it is told by the clock', async ({ hands, host, page, watch }) => {
  test.setTimeout(120_000);
  await wakeAt(page, dawn);
  await haveATestedHorse(hands, page);
  await hands.open('#/paddock');
  await readSentence(hands);
  await firstVisitIsOver(page);
  await host.stop();
  watch.tolerates(/sw\.js|ERR_CONNECTION_REFUSED|fetching the script/, 'the browser may look for a newer worker in vain');
  await flushIsOver(hands);
  await say(hands, 'Night over 5 °C');
  await hands.see(sentence('Grass is open until 09:00'));
  await hands.tap(button('Turn out Fern'));
  await hands.see(sentence('Bring in Fern by 09:00'));
});
