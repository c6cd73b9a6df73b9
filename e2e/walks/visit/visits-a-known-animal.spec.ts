/** The consultant beside a known animal: tape, six sites, crest, look-over, photograph, with no signal, in order and in few touches. */
import { records } from '../../device/database.ts';
import { Chooser, drawn } from '../../device/photographs.ts';
import { firstVisitIsOver } from '../../device/worker.ts';
import { button, field, link, sentence, thing } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal, tape } from '../../models/animals.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

test('tape, sites, crest, look-over and a photograph in 40 touches', async ({ hands, host, page, watch, holds }, info) => {
  watch.tolerates(/sw\.js|ERR_CONNECTION_REFUSED|fetching the script/, 'the browser may look for a newer worker in vain');
  await hands.open(newAnimalForm);
  await firstVisitIsOver(page);
  await host.stop();
  await fillIn(hands, { name: 'Moss', kind: 'Pony', height: '128', born: '2012' });
  hands.touches.reset();
  await saveAnimal(hands, 'Moss');
  expect(await tape(hands, '158', '150')).toMatch(/^Moss: \d+ kg, give or take \d+ kg$/);

  await hands.tap(link('Score Moss'));
  for (const [site, score] of Object.entries({ neck: 7, withers: 6, shoulder: 6, ribs: 7, loin: 6, tail: 7 })) {
    await hands.see(sentence(new RegExp(site, 'i')));
    if (site === 'ribs') await holds('condition-ribs');
    await hands.tap(button(String(score)));
    await hands.tap(link(/^Next: /));
  }
  await hands.see(sentence(/^6\.5, the first score$/));
  await holds('condition-summary');
  await hands.tap(button('Save condition'));

  await hands.tap(link('Score the crest'));
  await hands.see(sentence('Score the crest of Moss'));
  await holds('crest');
  await hands.tap(thing('radio', /^3/));
  await hands.tap(button('Save crest'));

  await hands.tap(link('Look Moss over'));
  await hands.see(sentence('Look Moss over'));
  await holds('look-over');
  await hands.tap(button('Looked at all of it: all normal'));
  await readSentence(hands, 'Look Moss over');

  const camera = new Chooser(page, info.outputPath('files'));
  camera.gives(await drawn(page, { width: 1600, height: 1200, seed: 1 }), new Date());
  await hands.tap(link(/^Photograph/));
  await hands.tap(button('Photograph the side'));
  await hands.see(sentence('Moss was last photographed today'));
  await hands.tap(link('Back'));
  await hands.see(link(/^Photograph.*from the side, today/));

  // practice.md section 4.
  expect(hands.touches.taps).toBeLessThanOrEqual(40);
  for (const kind of ['weight', 'condition', 'crest', 'look_over', 'photo']) expect(await records(page, kind), kind).toHaveLength(1);
  expect(await hands.count(field('Heart girth'))).toBe(0);
  await holds('beside-after-visit');
});
