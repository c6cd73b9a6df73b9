/** Foods at the desk: a label with a swapped unit, a pasted one accepted by eye, a typical food taken into the shed. */
import { records, rows } from '../../device/database.ts';
import { firstVisitIsOver } from '../../device/worker.ts';
import { button, choice, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

const newFood = '#/desk/foods/new';
const line = (at: number) => thing('group', `Line ${at}`);

/** An invented label, with what labels have: a form of a mineral, two readings, a unit without its whole. */
const label = [
  'Stable Mix No. 4 (as fed)',
  'Calcium 3.0 %',
  'Copper (as copper sulphate) 400 mg/kg',
  'Vitamin E 2,500 IU/kg',
  'Zinc 120 mg',
].join('\n');

test('a swapped unit is told at its line, and a kilogram has its price', async ({ hands, page, holds }) => {
  test.setTimeout(120_000);
  await haveAPlan(hands);
  await hands.open('#/desk');
  await hands.tap(link(/^Foods/));
  await hands.see(sentence("No food of the yard's own yet"));
  await holds('foods-none');
  await hands.tap(link('Add a food'));
  await hands.see(sentence('Which food is it?'));
  await hands.see(words('A label says what the maker says: nobody here checked it.'));
  await hands.tap(button('Save food'));
  await hands.see(words(/^Type a name/));

  await hands.type(field('Name of the food'), 'Stable mix');
  await hands.tap(choice(/^Balancer/));
  await hands.tap(choice('The food as it lies in the bag'));
  await hands.tap(button('Add a line'));
  await hands.type(thing('combobox', 'Of what', line(1)), 'Copper');
  await hands.type(field('How much', line(1)), '25');
  await hands.type(thing('combobox', 'In which unit', line(1)), '%');
  // A quarter of a balancer is not copper.
  await hands.see(words(/^Copper: 25 % is unlikely in such a food/, line(1)));
  await holds('food-form-swapped');
  await hands.type(thing('combobox', 'In which unit', line(1)), 'mg/kg');
  await expect.poll(() => hands.count(words(/is unlikely in such a food/))).toBe(0);

  await hands.type(field('A pack weighs'), '20');
  await hands.type(field('Price of a pack'), '24.95');
  await hands.type(field('Currency'), 'GBP');
  await hands.see(words('1.25 GBP a kg'));

  // The phone dies in the middle: the form comes back as it was left.
  await expect.poll(async () => JSON.stringify(await rows(page, 'drafts'))).toContain('GBP');
  await hands.open(newFood);
  await hands.see(words('As you left it at'));
  expect(await hands.see(field('Price of a pack'))).toBe('24.95');
  expect(await hands.see(field('How much', line(1)))).toBe('25');
  expect(await hands.see(thing('combobox', 'Of what', line(1)))).toBe('Copper');

  await hands.tap(button('Save food'));
  expect(await readSentence(hands, 'Which food is it?')).toBe('1 food here');
  await hands.see(link(/^Stable mix 1\.25 GBP a kg Balancer, label with 1 line/));
  await holds('foods');
  const [food] = await records(page, 'food');
  expect(JSON.stringify(food)).toContain('"class":"balancer"');
});

test('a pasted label is taken number by number', async ({ hands, page, holds }) => {
  test.setTimeout(120_000);
  await haveAPlan(hands);
  await hands.open(newFood);
  await hands.type(field('Name of the food'), 'Stable mix');
  await hands.tap(choice(/^Balancer/));
  await hands.tap(button('Paste a label'));
  await hands.type(field('Text of the label'), label);
  await hands.see(words('5 numbers found, 5 to look at'));
  await hands.see(words('The text speaks of as fed.'));
  // Nothing is taken before it was looked at.
  expect(await hands.count(line(1))).toBe(0);
  const read = (name: string | RegExp) => thing('group', name);
  await hands.tap(choice('Accept', read('Calcium: 3 %')));
  await hands.tap(choice('Accept', read('Copper: 400 mg/kg')));
  // A comma can part decimals and thousands: the person says which.
  await hands.tap(choice('Not this', read('Vitamin E: 2.5 IU/kg')));
  await hands.tap(choice('Accept', read(/^Vitamin E: 2,?500 IU\/kg$/)));
  await hands.tap(choice('Accept', read('Zinc: 120 in a unit to choose')));
  await hands.see(words('5 numbers found, all looked at'));
  await holds('food-pasted');
  await hands.tap(choice('The food as it lies in the bag'));
  await hands.tap(button('Save food'));
  await hands.see(words('Choose the unit that stands on the label', line(4)));
  // The second thoughts take the line off again.
  await hands.tap(choice('Not this', read('Zinc: 120 in a unit to choose')));
  await expect.poll(() => hands.count(line(4))).toBe(0);
  await readBeforeAgain(page);
  await hands.tap(button('Save food'));
  await hands.see(link(/^Stable mix .*label with 3 lines/));
});

test('a typical food is taken into the shed without signal', async ({ hands, page, host, holds, watch }) => {
  watch.tolerates(/sw\.js|ERR_CONNECTION_REFUSED|fetching the script/, 'the browser may look for a newer worker in vain');
  await haveAPlan(hands);
  await hands.open('#/desk/foods');
  await readSentence(hands);
  await firstVisitIsOver(page);
  await host.stop();
  await hands.tap(link('Soya hulls'));
  await hands.see(sentence('Soya hulls'));
  // Selenium follows the soil, and no mean of it is believed.
  expect(await hands.count(words('not known'))).toBeGreaterThan(0);
  await holds('food-typical');
  await hands.tap(button(/Mcal a kg of dry matter where it comes from$/));
  await hands.see(words(/^Digestible energy: /));
  await hands.tap(sentence('Soya hulls'));
  await hands.tap(button('Take it into the shed'));
  await hands.see(words(/^The typical numbers of soya hulls stand in/));
  await hands.type(field('A pack weighs'), '15');
  await hands.type(field('Price of a pack'), '9');
  await hands.type(field('Currency'), 'GBP');
  await hands.see(words('0.60 GBP a kg'));
  await hands.tap(button('Save food'));
  await hands.see(link(/^Soya hulls 0\.60 GBP a kg Fibre in a bucket, typical numbers/));
  await hands.see(words('Saved.'));
  await hands.tap(button('Undo'));
  await hands.see(link(/^Soya hulls Fibre in a bucket, typical numbers/));
});
