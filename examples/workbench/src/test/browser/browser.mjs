// What the scripts of this folder share: a browser, pages whose complaints and requests are kept, axe-core, pictures, the telling of checks.
import assert from 'node:assert/strict';
import {readFileSync, mkdirSync} from 'node:fs';
import {createRequire} from 'node:module';
import {join} from 'node:path';
import {chromium} from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
let since = performance.now();

/** Tells a check that holds, and how long it took since the one before. */
export function done(what) {
  const now = performance.now();
  console.log('ok  ' + what + ' [' + ((now - since) / 1000).toFixed(1) + ' s]');
  since = now;
}

/**
 * A browser of one's own.
 *
 * executablePath: where Chromium lies; shots: the folder for pictures, which is made.
 */
export async function launch(executablePath, shots) {
  mkdirSync(shots, {recursive: true});
  const browser = await chromium.launch({
    executablePath,
    headless: true,
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
      '--disable-component-update', '--disable-sync'],
  });

  /**
   * A page in a context of its own, with all complaints and requests kept; what `close` asks for is that nothing stands on the console,
   * and that no request, told as `GET http://...`, was made that `expected` does not know.
   */
  async function open(url, expected, {before, ...context} = {}) {
    const own = await browser.newContext({viewport: {width: 1280, height: 800}, ...context});
    const page = await own.newPage();
    const complaints = [];
    const others = [];
    page.on('console', m => { if (m.type() === 'error' || m.type() === 'warning') complaints.push(m.text()); });
    page.on('pageerror', e => complaints.push(String(e)));
    page.on('request', r => {
      const asked = r.method() + ' ' + r.url().replace(/#.*$/, '');
      if (!expected(asked)) others.push(asked);
    });
    if (before) await page.addInitScript(before);
    await page.goto(url);
    return {
      page,
      async close() {
        assert.deepEqual(complaints, [], url + ': nothing stands on the console');
        assert.deepEqual(others, [], url + ': nothing is asked for from elsewhere');
        await own.close();
      },
    };
  }

  return {
    open,
    shoot: (page, name, options = {}) => page.screenshot({path: join(shots, name), ...options}),
    close: () => browser.close(),
  };
}

/** That axe-core finds nothing on the page that is serious or worse; with `slightToo` nothing at all. */
export async function audit(page, what, {slightToo = false} = {}) {
  if (!await page.evaluate(() => 'axe' in window)) await page.evaluate(axeSource);
  const found = await page.evaluate(() => window.axe.run(document, {preload: false, resultTypes: ['violations']}));
  const grave = found.violations
    .filter(v => slightToo || v.impact === 'serious' || v.impact === 'critical')
    .map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.target.join(' ') + ' ' + n.failureSummary).join(' | '));
  assert.deepEqual(grave, [], 'axe, ' + what);
  assert.ok(found.passes.length > 10, 'axe looked at the page');
  const slight = found.violations.map(v => v.id + ' (' + v.impact + ')');
  done('axe finds nothing that keeps people out, ' + what + (slight.length ? '; slight: ' + slight.join(', ') : ''));
}

/** How far the page sticks out of its window sideways. */
export const sideways = page =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
