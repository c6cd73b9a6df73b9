/** From six answers to a plan, and it stands after the page was closed: in every engine that owners carry. */
import { link, sentence } from '../../hands/hands.ts';
import { bramble, haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('a first plan is made, saved, and there again', async ({ elsewhere }) => {
  test.setTimeout(180_000);
  await haveAPlan(elsewhere, bramble);
  await elsewhere.shot('engine-saved');
  await elsewhere.open('#/round');
  expect(await elsewhere.see(sentence(/due|later|late/))).toMatch(/\d/);
  await elsewhere.open('#/horses');
  await elsewhere.see(link(/^Bramble/));
  await elsewhere.shot('engine-again');
});
