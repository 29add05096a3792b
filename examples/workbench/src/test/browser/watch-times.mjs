// How long it takes from saving a watched draft to its picture:
//   node watch-times.mjs CHROMIUM ADDRESS DRAFT EDITS WORDS
// Each edit puts a few millimetres behind the first WORDS of the draft, on the whole sheet of a page 1280 wide.
import {readFileSync, renameSync, writeFileSync} from 'node:fs';
import {basename} from 'node:path';
import {chromium} from 'playwright-core';

const [, , executablePath, address, draft, edits, words] = process.argv;
const original = readFileSync(draft, 'utf8');
if (!original.includes(words)) {
  throw new Error('the draft has no ' + words);
}
const browser = await chromium.launch({executablePath, headless: true, args: ['--no-sandbox', '--disable-gpu']});
const page = await browser.newPage({viewport: {width: 1280, height: 800}});
await page.goto(address);
await page.waitForSelector('#pictures svg', {timeout: 60000});

/** As an editor saves: a new file in the place of the old one. */
function save(text) {
  writeFileSync(draft + '.new', text);
  renameSync(draft + '.new', draft);
}

const WARM = 30;
const times = [];
for (let i = 0; i < WARM + Number(edits); i++) {
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
  await new Promise(r => setTimeout(r, 30));
  const began = Date.now();
  save(original.replace(words, words + ' + ' + (1 + i % 9) + ' mm'));
  const took = await changed - began;
  if (i >= WARM) {
    times.push(took);
  }
}
times.sort((a, b) => a - b);
console.log('from saving to the picture, ' + basename(draft) + ', ' + edits + ' edits: median ' + times[times.length >> 1]
  + ' ms, 95th percentile ' + times[Math.floor(times.length * 0.95)] + ' ms');
save(original);
await browser.close();
