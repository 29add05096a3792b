// How long it takes from saving a watched draft, and from moving a measure, to the picture:
//   node watch-times.mjs CHROMIUM ADDRESS DRAFT TIMES WORDS MEASURE
// Each edit puts a few millimetres behind the first WORDS of the draft, each move slides MEASURE, on the page 1280 wide.
import {readFileSync, renameSync, writeFileSync} from 'node:fs';
import {basename} from 'node:path';
import {chromium} from 'playwright-core';

const [, , executablePath, address, draft, wanted, words, measure] = process.argv;
const original = readFileSync(draft, 'utf8');
if (!original.includes(words)) {
  throw new Error('the draft has no ' + words);
}
const browser = await chromium.launch({executablePath, headless: true, args: ['--no-sandbox', '--disable-gpu']});
const page = await browser.newPage({viewport: {width: 1280, height: 800}});
await page.goto(address);
await page.waitForSelector('#pictures svg', {timeout: 60000});

const WARM = 30;

/** Does something again and again; each time until the page has drawn what is newer. */
async function time(what, change) {
  const times = [];
  for (let i = 0; i < WARM + Number(wanted); i++) {
    const changed = page.evaluate(() => new Promise(done => {
      const known = Number(document.documentElement.dataset.version);
      const watch = new MutationObserver(() => {
        if (Number(document.documentElement.dataset.version) > known) {
          watch.disconnect();
          requestAnimationFrame(() => done(Date.now()));
        }
      });
      watch.observe(document.documentElement, {attributes: true});
    }));
    // Not in step with the looking at files.
    await new Promise(r => setTimeout(r, 30 + i % 5));
    const began = await change(i);
    const took = await changed - began;
    if (i >= WARM) {
      times.push(took);
    }
  }
  times.sort((a, b) => a - b);
  console.log('from ' + what + ' to the picture, ' + basename(draft) + ', ' + wanted + ' times: median '
    + times[times.length >> 1] + ' ms, 95th percentile ' + times[Math.floor(times.length * 0.95)] + ' ms, longest '
    + times[times.length - 1] + ' ms');
}

await time('saving', i => {
  const began = Date.now();
  // As an editor saves: a new file in the place of the old one.
  writeFileSync(draft + '.new', original.replace(words, words + ' + ' + (1 + i % 9) + ' mm'));
  renameSync(draft + '.new', draft);
  return began;
});
await time('moving a measure', i => page.evaluate(([label, by]) => {
  const slider = [...document.querySelectorAll('#card input[type="range"]')].find(s =>
    s.getAttribute('aria-label').toLowerCase().startsWith(label));
  window.first ??= Number(slider.value);
  slider.value = String(window.first + by);
  const began = Date.now();
  slider.dispatchEvent(new Event('input', {bubbles: true}));
  return began;
}, [measure, 0.5 * (1 + i % 9)]));
writeFileSync(draft, original);
await browser.close();
