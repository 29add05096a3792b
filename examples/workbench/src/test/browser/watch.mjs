// Drives a browser through a draft that is watched while its file changes.
//
//   node watch.mjs CHROMIUM ADDRESS DRAFT SHOTS
//
// ADDRESS is where the workbench serves the page, DRAFT the file that it watches, which is written to here; SHOTS a folder for pictures.
// Ends with 0 if all holds; each check that holds is told.
import assert from 'node:assert/strict';
import {readFileSync, renameSync, writeFileSync} from 'node:fs';
import {createServer, request} from 'node:http';
import {audit, done, launch, sideways} from './browser.mjs';

const [, , executablePath, address, draft, shots] = process.argv;
const original = readFileSync(draft, 'utf8');
const browser = await launch(executablePath, shots);

/** The page with the draft, once it is drawn. */
async function open(options) {
  const opened = await browser.open(address, asked => asked.split(' ')[1].startsWith(address), options);
  await opened.page.waitForSelector('#pictures svg', {timeout: 60000});
  return opened;
}

/** As an editor saves: a new file in the place of the old one. */
function save(text) {
  writeFileSync(draft + '.new', text);
  renameSync(draft + '.new', draft);
}

async function check(what, work) {
  await work();
  done(what);
}

const heard = (page, seen) => page.waitForFunction(
  known => Number(document.documentElement.dataset.version) > known, seen, {timeout: 60000});
const version = page => page.evaluate(() => Number(document.documentElement.dataset.version));
const paths = page => page.evaluate(() => [...document.querySelectorAll('#pictures svg path')].map(p => p.getAttribute('d')).join('\n'));
const state = page => page.textContent('#state');
const lit = page => page.evaluate(() => [...new Set([...document.querySelectorAll('#pictures .lit')].map(g => g.dataset.name))]);
const sums = page => page.evaluate(() => [...document.querySelectorAll('#sums dt')].map((d, i) => [d.textContent, document.querySelectorAll('#sums dd')[i].textContent]));

const wide = await open();
const {page} = wide;

await check('the draft stands beside its picture', async () => {
  const texts = await page.evaluate(() => [...document.querySelectorAll('#lines .line')].map(l => l.textContent));
  const wanted = original.replace(/\n$/, '').split('\n').map(l => l || ' ');
  assert.deepEqual(texts, wanted);
  assert.match(await state(page), /no mistake; no seam or check fails$/);
  assert.equal(await page.locator('#pictures .of').count(), 1);
  const pieces = [...original.matchAll(/^(?:piece|strip) (\w+)/gm)].map(m => m[1]);
  assert.deepEqual((await page.locator('#pictures figcaption').allTextContents()).sort(), pieces.sort(), 'each picture says which piece it is');
  assert.match(await page.textContent('#place'), /not all to one scale/);
  await browser.shoot(page, 'wide.png');
});

await check('an edit that is saved is drawn', async () => {
  const before = await paths(page);
  const seen = await version(page);
  save(original.replace(/down body_length/, 'down body_length + 6 cm'));
  await heard(page, seen);
  assert.match(await page.textContent('#lines'), /down body_length \+ 6 cm/);
  assert.notEqual(await paths(page), before);
});

await check('a mistake is told at its line, and the last good picture stays', async () => {
  const before = await paths(page);
  const seen = await version(page);
  const broken = original.replace(/down body_length/, 'down body_lenght');
  const line = broken.split('\n').findIndex(l => l.includes('body_lenght')) + 1;
  save(broken);
  await heard(page, seen);
  assert.equal(await paths(page), before);
  assert.match(await state(page), /1 mistake; the picture is the last good one/);
  assert.equal(await page.locator('#pictures .of.stale').count(), 1);
  const faulty = page.locator('#lines .faulty');
  assert.equal(await faulty.first().getAttribute('data-line'), String(line));
  const told = await page.locator('#lines .wrong').first().textContent();
  assert.match(told, /body_lenght/);
  assert.match(told, /body_length/);
  await audit(page, 'with a mistake', {slightToo: true});
  await browser.shoot(page, 'mistake.png');
});

await check('a file that is away for a while is told, and nothing is lost', async () => {
  const seen = await version(page);
  renameSync(draft, draft + '.away');
  await heard(page, seen);
  assert.match(await page.textContent('#elsewhere'), /There is no draft/);
  assert.ok(await page.locator('#pictures svg').count() >= 3);
  const next = await version(page);
  renameSync(draft + '.away', draft);
  await heard(page, next);
});

await check('what is mended is drawn again', async () => {
  const seen = await version(page);
  save(original);
  await heard(page, seen);
  assert.match(await state(page), /no mistake; no seam or check fails$/);
  assert.equal(await page.locator('#lines .wrong').count(), 0);
  assert.equal(await page.locator('#pictures .stale').count(), 0);
});

await check('a measure that is slid is drawn, in every tab, and taken back', async () => {
  const other = await open();
  const before = await paths(page);
  const seen = await version(other.page);
  const slider = page.locator('#card input[type="range"]').first();
  const most = await slider.getAttribute('max');
  await slider.fill(String(Math.floor(Number(await slider.inputValue()) + 4)));
  await heard(page, seen);
  await heard(other.page, seen);
  await page.waitForFunction(old => [...document.querySelectorAll('#pictures svg path')].map(p => p.getAttribute('d')).join('\n') !== old, before);
  assert.ok(Number(most) > 0);
  const field = page.locator('#card input[type="text"]').first();
  assert.equal(await field.inputValue(), await other.page.locator('#card input[type="text"]').first().inputValue());
  await field.fill('a wagon');
  await page.waitForFunction(() => document.querySelector('#card [aria-invalid="true"]'));
  assert.match(await page.locator('#card .wrong p').first().textContent(), /a wagon/);
  await page.click('#clear');
  await page.waitForFunction(() => !document.querySelector('#card [aria-invalid="true"]'));
  assert.equal(await paths(page), before);
  await other.close();
});

await check('a measure by the tape is slid by eighths, and typing moves the slide', async () => {
  const fresh = await open();
  const own = fresh.page;
  const shown = page => page.locator('#card input[type="text"]').first();
  await own.selectOption('#body', 'Maren Oddway');
  await own.waitForFunction(() => / in$/.test(document.querySelector('#card input[type="text"]').value));
  const slider = own.locator('#card input[type="range"]').first();
  assert.equal(await shown(own).inputValue(), '38 1/2 in');
  assert.equal(await slider.inputValue(), '38.5');
  const before = await paths(own);
  for (const [to, words] of [['38.625', '38 5/8 in'], ['38.75', '38 3/4 in'], ['39', '39 in']]) {
    const seen = await version(own);
    await slider.fill(to);
    await heard(own, seen);
    assert.equal(await shown(own).inputValue(), words);
    assert.equal(await slider.getAttribute('aria-valuetext'), words);
  }
  assert.notEqual(await paths(own), before);
  await shown(own).fill('37 1/4 in');
  await own.waitForFunction(() => document.querySelector('#card input[type="range"]').value === '37.25');
  await own.click('#clear');
  await own.waitForFunction(() => document.querySelector('#card input[type="text"]').value === '38 1/2 in');
  assert.equal(await paths(own), before);
  await fresh.close();
});

await check('a point shows its sum and its line, a line what it makes', async () => {
  const name = await page.evaluate(() => document.querySelector('#pictures figure[data-piece="Back"] [data-name="neck_edge"]') && 'neck_edge');
  assert.equal(name, 'neck_edge');
  await page.evaluate(() => document.querySelector('#pictures figure[data-piece="Back"] [data-name="neck_edge"]').dispatchEvent(new MouseEvent('click', {bubbles: true})));
  assert.deepEqual(await lit(page), ['neck_edge']);
  const [[what, sum]] = await sums(page);
  assert.equal(what, 'Back.neck_edge');
  assert.ok(sum.length > 10);
  const pressed = page.locator('#lines .line[aria-pressed="true"]');
  assert.match(await pressed.textContent(), /neck_edge/);
  const line = page.locator('#lines .line', {hasText: /point\s+underarm\b/}).first();
  await line.click();
  assert.ok((await lit(page)).includes('underarm'));
  assert.ok((await sums(page)).some(([n]) => n.endsWith('.underarm')));
});

await check('the construction is walked by keys', async () => {
  await page.locator('#pictures').focus();
  await page.keyboard.press('ArrowRight');
  await page.waitForFunction(() => document.getElementById('place').textContent.startsWith('Step 1 of'));
  for (let i = 2; i <= 4; i++) {
    await page.keyboard.press('ArrowRight');
    await page.waitForFunction(n => document.getElementById('place').textContent.startsWith('Step ' + n + ' of'), i);
  }
  assert.equal(await page.locator('#pictures svg').count(), 1);
  assert.equal(await page.locator('#pictures figcaption').count(), 0);
  await browser.shoot(page, 'step.png');
  await page.keyboard.press('ArrowLeft');
  await page.waitForFunction(() => document.getElementById('place').textContent.startsWith('Step 3 of'));
  await page.click('#whole');
  await page.waitForFunction(() => document.getElementById('place').textContent.startsWith('Each piece as a whole'));
});

await check('lines are walked by keys', async () => {
  await page.locator('#lines .line[tabindex="0"]').focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowDown');
  assert.equal(await page.evaluate(() => document.activeElement.dataset.line), '2');
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  assert.equal(await page.locator('#lines .line[aria-pressed="true"]').count(), 1);
});

await check('several bodies stand side by side', async () => {
  await page.locator('#beside input').first().check();
  await page.waitForFunction(() => document.querySelectorAll('#pictures .of').length === 2);
  await browser.shoot(page, 'beside.png');
  await page.locator('#beside input').first().uncheck();
  await page.waitForFunction(() => document.querySelectorAll('#pictures .of').length === 1);
});

await check('seams stand with their state, the worst first', async () => {
  const seen = await version(page);
  save(original + '\ncheck length(Back.shoulder) >= 3 m "The shoulder is only {length(Back.shoulder)} long."\n');
  await heard(page, seen);
  const states = await page.evaluate(() => [...document.querySelectorAll('#seams .state')].map(s => s.textContent));
  assert.equal(states[0], 'fails');
  assert.match(await state(page), /; 1 of \d+ seams and checks fails$/);
  assert.ok(states.slice(1).every(s => s !== 'fails'));
  const next = await version(page);
  save(original);
  await heard(page, next);
});

await check('a seam shows its edges', async () => {
  const seam = page.locator('#seams li').filter({has: page.locator('text=/Front.shoulder .*Back.shoulder/')});
  await seam.locator('button').first().click();
  assert.deepEqual(await lit(page), ['shoulder']);
  assert.deepEqual((await sums(page)).map(([n]) => n).sort(), ['Back.shoulder', 'Front.shoulder']);
  assert.equal(await page.evaluate(() => document.querySelectorAll('#pictures figure:has(.lit)').length), 2);
  await browser.shoot(page, 'seam.png');
});

await check('a page whose connection is cut says so, and goes on when it can', async () => {
  const bench = new URL(address);
  const sockets = new Set();
  /** Between the page and the workbench, so that it can be cut; the workbench answers only to its own name. */
  const between = createServer((asked, answer) => {
    const headers = {...asked.headers, host: bench.host};
    if (headers.origin) headers.origin = bench.origin;
    const on = request({host: bench.hostname, port: bench.port, path: asked.url, method: asked.method, headers},
      got => { answer.writeHead(got.statusCode, got.headers); got.pipe(answer); });
    on.on('error', () => answer.destroy());
    answer.on('close', () => on.destroy());
    asked.pipe(on);
  });
  between.on('connection', socket => { sockets.add(socket); socket.on('close', () => sockets.delete(socket)); socket.on('error', () => {}); });
  const listening = port => new Promise(ready => between.listen(port, '127.0.0.1', ready));
  await listening(0);
  const port = between.address().port;
  const own = await browser.open('http://127.0.0.1:' + port + bench.pathname, () => true);
  await own.page.waitForSelector('#pictures svg', {timeout: 60000});
  const before = await paths(own.page);
  assert.match(await state(own.page), /no mistake/);

  between.close();
  for (const socket of sockets) socket.destroy();
  await own.page.waitForFunction(() => /does not answer/.test(document.getElementById('state').textContent));
  assert.equal(await paths(own.page), before, 'the picture stays');
  const seen = await version(page);
  save(original.replace(/down body_length/, 'down body_length + 7 cm'));
  await heard(page, seen);
  await listening(port);
  await own.page.waitForFunction(() => /no mistake/.test(document.getElementById('state').textContent), null, {timeout: 60000});
  assert.match(await own.page.textContent('#lines'), /down body_length \+ 7 cm/, 'what was missed is shown');
  assert.notEqual(await paths(own.page), before);
  const next = await version(own.page);
  save(original);
  await heard(own.page, next);
  assert.equal(await paths(own.page), before);
  await own.page.context().close();
  between.close();
  for (const socket of sockets) socket.destroy();
});

await check('pages that nobody sees hold no connection, and are up to date when they are looked at', async () => {
  // Chromium keeps six connections to one site; each page but the last is put behind the next one.
  const context = await page.context().browser().newContext();
  const look = (one, state) => one.evaluate(now => {
    Object.defineProperty(document, 'visibilityState', {value: now, configurable: true});
    document.dispatchEvent(new Event('visibilitychange'));
  }, state);
  const pages = [];
  for (let i = 0; i < 7; i++) {
    const next = await context.newPage();
    await next.goto(address);
    await next.waitForSelector('#pictures svg', {timeout: 60000});
    pages.push(next);
    if (i < 6) await look(next, 'hidden');
  }
  const old = await version(pages[0]);
  const seen = await version(pages[6]);
  save(original.replace(/down body_length/, 'down body_length + 8 cm'));
  await heard(pages[6], seen);
  await heard(page, seen);
  assert.equal(await version(pages[0]), old);
  await look(pages[0], 'visible');
  await heard(pages[0], old);
  assert.match(await pages[0].textContent('#lines'), /down body_length \+ 8 cm/);
  await context.close();
  const next = await version(page);
  save(original);
  await heard(page, next);
});

await check('nothing keeps people out, wide and dark', async () => {
  await audit(page, 'wide', {slightToo: true});
  await page.click('#dark');
  await audit(page, 'dark', {slightToo: true});
  await browser.shoot(page, 'dark.png');
  await page.click('#dark');
});

await check('a page on a narrow screen', async () => {
  await page.setViewportSize({width: 390, height: 844});
  assert.equal(await sideways(page), 0);
  await audit(page, 'narrow', {slightToo: true});
  await browser.shoot(page, 'narrow.png', {fullPage: true});
  await page.click('#dark');
  await browser.shoot(page, 'narrow-dark.png', {fullPage: true});
  await page.click('#dark');
  await page.setViewportSize({width: 1280, height: 800});
});

await check('text of a draft is never taken for more', async () => {
  const seen = await version(page);
  save(original.replace(/^draft "[^"]*"/m, 'draft "<img src=x onerror=alert(1)>"'));
  await heard(page, seen);
  assert.equal(await page.locator('img').count(), 0);
  assert.match(await page.textContent('#title'), /<img/);
  const next = await version(page);
  save(original);
  await heard(page, next);
});

await wide.close();
await browser.close();
