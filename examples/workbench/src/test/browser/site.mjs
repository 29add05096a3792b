// Drives a browser through the documentation's site, opened from disk.
//
//   node site.mjs CHROMIUM SITE SHOTS
//
// SITE is the file URL of the site's folder, ending in a slash; SHOTS a folder for pictures of pages. Ends with 0 if all holds; each check
// that holds is told on a line.
import assert from 'node:assert/strict';
import {audit, done, launch, sideways} from './browser.mjs';

const [, , executablePath, site, shots] = process.argv;
const browser = await launch(executablePath, shots);

/** A page of the site, which asks for nothing from elsewhere. */
const open = (address, options) => browser.open(site + address, asked => asked.startsWith('GET ' + site), options);

/** Pages as they are looked at; those with their words in an order or a look of their own are held to axe-core too. */
const looks = [
  {address: 'index.html', colorScheme: 'light', width: 1280, audited: true},
  {address: 'index.html', colorScheme: 'dark', width: 390, audited: true},
  {address: 'docs/tutorial/2-back.html', colorScheme: 'light', width: 390},
  {address: 'docs/reference/language.html', colorScheme: 'light', width: 390, audited: true},
  {address: 'docs/gallery.html', colorScheme: 'light', width: 1280, audited: true},
  {address: 'docs/diagnostics/SEW036.html', colorScheme: 'dark', width: 1280},
  {address: 'docs/reference/cheat-sheet.html', colorScheme: 'light', width: 1280, audited: true},
  {address: 'search.html?q=seam%20allowance', colorScheme: 'dark', width: 390, audited: true},
];

/** What must stand first when one looks for it, and where. */
const wanted = [
  ['SEW036', 'docs/diagnostics/SEW036.html'],
  ['print at true scale', 'docs/how-to/print-at-scale.html'],
  ['printing at true scale', 'docs/how-to/print-at-scale.html'],
  ['circle skirt', 'docs/how-to/circle-skirt.html'],
  ['cheat sheet', 'docs/reference/cheat-sheet.html'],
  ['unknowns', 'docs/reference/language.html#unknowns'],
  ['lay pieces on cloth', 'docs/how-to/lay-plan.html'],
  ['seam allowance', 'docs/how-to/allowances.html'],
  ['dart', 'docs/reference/language.html#darts'],
  ['armhole', 'docs/tutorial/2-back.html#armhole'],
  ['inches', 'docs/how-to/units-and-fractions.html'],
  ['curve', 'docs/reference/language.html#lines-and-curves'],
  ['hem', 'docs/tutorial/2-back.html#side-and-hem'],
  ['apron', 'docs/tutorial/8-apron.html'],
];

async function checks() {
  {
    const {page, close} = await open('index.html');
    for (const {address, colorScheme, width, audited} of looks) {
      await page.setViewportSize({width, height: 900});
      await page.emulateMedia({colorScheme});
      await page.goto(site + address);
      if (address.startsWith('search')) await page.locator('#results li').first().waitFor();
      assert.equal(await sideways(page), 0, `nothing of ${address} sticks out sideways at ${width}`);
      await browser.shoot(page, address.replace(/[^a-z0-9]+/gi, '-') + `-${colorScheme}-${width}.png`);
      if (audited) await audit(page, `${address}, ${colorScheme}, ${width} wide`);
    }
    done(`${looks.length} looks, nothing sticks out`);

    await page.setViewportSize({width: 1280, height: 900});
    await page.emulateMedia({colorScheme: 'light'});
    await page.goto(site + 'search.html');
    for (const [asked, address] of wanted) {
      await page.locator('#q').fill(asked);
      await page.waitForFunction(a => document.getElementById('told').textContent.endsWith('found for ' + a + '.'), asked);
      assert.equal(await page.locator('#results a').first().evaluate(a => a.href), site + address, 'the first for ' + asked);
    }
    await page.locator('#q').fill('yoke begin trial.nape');
    await page.waitForFunction(() => document.getElementById('told').textContent.endsWith('found for yoke begin trial.nape.'));
    assert.ok((await page.locator('#results .hit-words').allTextContents()).includes('piece Yoke { point begin = Trial.nape }'),
      'what is short stands there whole');
    await page.locator('#q').fill('qwertzuiop');
    await page.waitForFunction(() => document.getElementById('told').textContent.startsWith('Nothing was found'));
    await page.locator('#q').fill('<img src=x onerror=alert(1)> seam');
    await page.waitForFunction(() => document.getElementById('told').textContent.includes('<img'));
    assert.equal(await page.locator('main img').count(), 0, 'what is typed stays text');
    done(`${wanted.length} searches find first what is meant`);

    await page.goto(site + 'docs/tutorial/1-frame.html');
    await page.keyboard.press('Tab');
    assert.equal(await page.evaluate(() => document.activeElement.className), 'skip', 'the way past the head comes first');
    await page.keyboard.press('Enter');
    assert.equal(await page.evaluate(() => document.activeElement.id), 'content');
    await page.keyboard.press('/');
    assert.equal(await page.evaluate(() => document.activeElement.id), 'q', 'a stroke leads to the search');
    await page.keyboard.type('pleats');
    const options = page.locator('#found [role=option]');
    await options.first().waitFor();
    assert.equal(await page.locator('#q').getAttribute('aria-expanded'), 'true');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowUp');
    assert.equal(await options.first().getAttribute('aria-selected'), 'true');
    assert.equal(await page.locator('#q').getAttribute('aria-activedescendant'), 'found-0');
    await audit(page, 'offers of the search');
    await browser.shoot(page, 'offers-light-1280.png');
    const to = await options.first().getAttribute('data-to');
    await page.keyboard.press('Escape');
    assert.ok(!await page.locator('#found').isVisible(), 'Escape closes the offers');
    await page.keyboard.type(' ');
    await options.first().waitFor();
    await page.keyboard.press('ArrowDown');
    await Promise.all([page.waitForURL(to), page.keyboard.press('Enter')]);
    await page.locator('#q').fill('gathers');
    await options.first().waitFor();
    await Promise.all([page.waitForURL(/search\.html\?q=gathers/), page.locator('#q').press('Enter')]);
    await page.locator('#results li').first().waitFor();
    done('the search by keyboard alone');

    await page.goto(site + 'docs/reference/cheat-sheet.html');
    const paper = await page.pdf({preferCSSPageSize: true, path: shots + '/cheat-sheet.pdf'});
    assert.equal((paper.toString('latin1').match(/\/Type\s*\/Page\b/g) || []).length, 1, 'the cheat sheet is one page of A4');
    await page.emulateMedia({media: 'print'});
    for (const hidden of ['header', '#menu', 'footer']) assert.ok(!await page.locator(hidden).first().isVisible());
    done('the cheat sheet is printed on one page');

    await close();
    done('nothing stands on the console, nothing is asked for from elsewhere');
  }

  {
    const {page, close} = await open('search.html', {javaScriptEnabled: false});
    assert.ok(await page.locator('noscript p', {hasText: 'needs a script'}).isVisible());
    await page.locator('main a').first().click();
    assert.ok(page.url().endsWith('docs/index.html'));
    await page.locator('#menu summary', {hasText: 'Tutorial'}).click();
    await page.locator('#menu a', {hasText: /^2\. The back$/}).click();
    assert.ok(page.url().endsWith('docs/tutorial/2-back.html'));
    await close();
    done('without a script all pages can be reached');
  }
}

try {
  await checks();
} finally {
  await browser.close();
}
