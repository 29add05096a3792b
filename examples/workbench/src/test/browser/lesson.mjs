// Drives a browser through a lesson from disk and through the same lesson as the workbench serves it.
//
//   node lesson.mjs CHROMIUM PAGE EXPECTED SERVED SHOTS
//
// PAGE is a file URL, EXPECTED a JSON file with what each step must show, SERVED the address of the served lesson, SHOTS a folder
// for pictures of the page. Ends with 0 if all holds; each check that holds is told on a line.
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';
import {audit, done, launch, sideways} from './browser.mjs';

const [, , executablePath, pageUrl, expectedFile, servedUrl, shots] = process.argv;
const expected = JSON.parse(readFileSync(expectedFile, 'utf8'));
const browser = await launch(executablePath, shots);

/** A lesson, which asks for nothing but itself; as it is served, its form is sent too. */
function open(url, options) {
  const own = url.replace(/#.*$/, '');
  return browser.open(url, asked => asked === 'GET ' + own || own === servedUrl && asked === 'POST ' + own, options);
}

/** What the page shows now. */
function shown(page) {
  return page.evaluate(() => {
    const visible = [...document.querySelectorAll('.step')].filter(s => s.checkVisibility());
    const step = visible[0];
    const svg = step.querySelector('svg');
    const box = svg && svg.getBoundingClientRect();
    return {
      visible: visible.length,
      id: step.id,
      piece: step.dataset.piece,
      title: step.querySelector('h2').textContent,
      says: [...step.querySelectorAll('.says p')].map(p => p.textContent),
      names: [...step.querySelectorAll('.told dt')].map(d => d.textContent),
      sentences: [...step.querySelectorAll('.told dd')].map(d => d.textContent),
      current: [...document.querySelectorAll('[aria-current="step"]')].map(a => a.getAttribute('href')),
      place: document.getElementById('place').textContent,
      said: document.getElementById('said').textContent,
      hash: location.hash,
      picture: svg && {role: svg.getAttribute('role'), width: box.width, height: box.height},
      drawn: svg ? [...new Set([...svg.querySelectorAll('g.name')].map(g => g.dataset.name))] : [],
    };
  });
}

function lit(page) {
  return page.evaluate(() => [...new Set([...document.querySelectorAll('svg .lit')].map(g => g.dataset.name))]);
}

/** Gives the focus to each name of the step that is seen and takes it away again: each name, with what was lit before and after. */
function focused(page) {
  return page.evaluate(() => {
    const now = () => [...new Set([...document.querySelectorAll('svg .lit')].map(g => g.dataset.name))];
    return [...document.querySelectorAll('.step.now .told a.key')].map(key => {
      key.focus();
      const on = now();
      key.blur();
      return {name: key.dataset.name, on, off: now()};
    });
  });
}

async function checks() {
  const count = expected.length;

  {
    const {page, close} = await open(pageUrl);
    await page.keyboard.press('ArrowLeft');
    let pictures = 0;
    for (let i = 0; i < count; i++) {
      const now = await shown(page);
      const wanted = expected[i];
      assert.equal(now.visible, 1, 'one step is seen');
      assert.equal(now.id, 'step-' + (i + 1));
      assert.equal(now.title, wanted.title);
      assert.equal(now.piece, wanted.piece);
      assert.deepEqual(now.says, wanted.says);
      assert.deepEqual(now.names, wanted.names);
      assert.deepEqual(now.sentences, wanted.sentences);
      assert.deepEqual(now.current, ['#step-' + (i + 1)]);
      assert.equal(now.place, `Step ${i + 1} of ${count}`);
      if (i > 0) {
        assert.equal(now.said, `Step ${i + 1} of ${count}. ${wanted.piece ? wanted.piece + ': ' : ''}${wanted.title}.`);
        assert.equal(now.hash, '#step-' + (i + 1));
      }
      assert.equal(now.picture !== null, wanted.pictured, 'a picture where there is one');
      if (now.picture) {
        pictures++;
        assert.equal(now.picture.role, 'img');
        assert.ok(now.picture.width > 200 && now.picture.height > 200, 'the picture has room: ' + JSON.stringify(now.picture));
      }
      assert.deepEqual(now.drawn, wanted.drawn, 'the picture is that of the step');
      await page.keyboard.press('ArrowRight');
    }
    assert.equal((await shown(page)).id, 'step-' + count, 'on from the last step leads nowhere');
    assert.ok(pictures > 9, 'there were pictures: ' + pictures);
    await page.keyboard.press('Home');
    assert.equal((await shown(page)).id, 'step-1');
    await page.keyboard.press('End');
    assert.equal((await shown(page)).id, 'step-' + count);
    await page.keyboard.press('ArrowLeft');
    assert.equal((await shown(page)).id, 'step-' + (count - 1));
    await page.keyboard.press('Alt+ArrowUp');
    await page.reload();
    assert.equal((await shown(page)).id, 'step-' + (count - 1), 'loading again keeps the step');
    done(`${count} steps walked by keyboard, names and pictures in step`);

    await page.keyboard.press('Home');
    await page.locator('#next').focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    assert.equal((await shown(page)).id, 'step-3');
    await page.locator('#back').click();
    assert.equal((await shown(page)).id, 'step-2');
    await page.locator('#steps a').nth(3).focus();
    await page.keyboard.press('Enter');
    assert.equal((await shown(page)).id, 'step-4');
    assert.equal(await page.evaluate(() => document.activeElement.textContent), expected[3].title, 'the keyboard is at the step');
    await page.evaluate(() => { location.hash = '#step-2'; });
    await page.waitForFunction(() => document.querySelector('.step.now').id === 'step-2');
    done('buttons, the list and the address lead to steps');

    await page.keyboard.press('Home');
    let looked = 0;
    for (let i = 0; i < count; i++) {
      const all = await focused(page);
      for (const {name, on, off} of all) {
        assert.deepEqual(on, [name], 'focus lights the place');
        assert.deepEqual(off, [], 'leaving puts it out');
      }
      if (all.length > 0) {
        await page.locator('.step.now .told a.key').first().hover();
        assert.deepEqual(await lit(page), [all[0].name], 'pointing lights the place');
        const looks = await page.evaluate(() => {
          const shape = document.querySelector('svg .lit path, svg .lit circle, svg .lit line');
          return shape === null ? 'none' : getComputedStyle(shape).stroke + ' ' + getComputedStyle(shape).strokeWidth;
        });
        assert.equal(looks, 'rgb(196, 0, 90) 5px', 'and it can be seen');
        await page.mouse.move(2, 2);
        assert.deepEqual(await lit(page), [], 'pointing elsewhere puts it out');
      }
      looked += all.length;
      await page.keyboard.press('ArrowRight');
    }
    assert.ok(looked >= count, 'there were names to look at: ' + looked);
    done(`${looked} names light just their places, and go out again`);

    await page.evaluate(() => { location.hash = '#step-3'; });
    await page.waitForFunction(() => document.querySelector('.step.now').id === 'step-3');
    for (const colorScheme of ['light', 'dark']) {
      await page.emulateMedia({colorScheme});
      for (const width of [1280, 390]) {
        await page.setViewportSize({width, height: 800});
        await browser.shoot(page, `${colorScheme}-${width}.png`);
        assert.equal(await sideways(page), 0, 'nothing sticks out sideways at ' + width);
        // Colours are those of the scheme at every width, and what stands where is that of the width in every scheme.
        if ((colorScheme === 'dark') === (width === 390)) await audit(page, `${colorScheme}, ${width} wide`);
      }
    }
    await page.emulateMedia({colorScheme: 'light'});
    await page.setViewportSize({width: 1280, height: 800});

    const word = () => page.evaluate(() => document.querySelector('.step.now svg g.name text').getBoundingClientRect().height);
    const inside = () => page.evaluate(() => {
      const frame = document.querySelector('.step.now svg').getBoundingClientRect();
      const fresh = new Set([...document.querySelectorAll('.step.now .told a.key')].map(a => a.dataset.name));
      return [...document.querySelectorAll('.step.now svg g.name')].filter(g => fresh.has(g.dataset.name)).every(g => {
        const box = g.getBoundingClientRect();
        return box.left >= frame.left && box.right <= frame.right && box.top >= frame.top && box.bottom <= frame.bottom;
      });
    });
    // The page measures itself when its window was changed.
    const settled = () => page.evaluate(() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done))));
    await settled();
    const far = await word();
    await page.locator('#closer').click();
    assert.ok(await word() > 1.5 * far, 'closer is larger');
    assert.ok(await inside(), 'and all that is new is seen');
    await browser.shoot(page, 'closer-1280.png');
    await page.reload();
    assert.ok(await word() > 1.5 * far, 'closer is kept');
    await page.locator('#closer').click();
    await settled();
    assert.ok(Math.abs(await word() - far) < 0.5, 'and the whole is back');
    done('the picture from closer by');

    await page.emulateMedia({reducedMotion: 'reduce'});
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll('*')].filter(e => parseFloat(getComputedStyle(e).transitionDuration) > 0).length);
    assert.equal(moving, 0, 'nothing moves where motion is not liked');
    await page.emulateMedia({media: 'print'});
    const visible = await page.evaluate(() => [...document.querySelectorAll('.step')].filter(s => s.checkVisibility()).length);
    assert.equal(visible, count, 'all steps are printed');
    for (const id of ['side', 'next', 'dark']) assert.ok(!await page.locator('#' + id).isVisible());
    const paper = await page.pdf({format: 'A4'});
    const pages = (paper.toString('latin1').match(/\/Type\s*\/Page\b/g) || []).length;
    assert.ok(pages >= count && pages <= count + 4, 'a page for each step: ' + pages);
    done(`no motion where it is not liked; printed on ${pages} pages`);

    await close();
    done('nothing stands on the console, nothing but the page itself is asked for');
  }

  {
    const {page, close} = await open(pageUrl, {colorScheme: 'dark'});
    const background = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    const night = await background();
    await page.locator('#dark').click();
    const day = await background();
    assert.notEqual(night, day, 'the switch turns dark to light');
    await page.reload();
    assert.equal(await background(), day, 'and is kept');
    const size = () => page.evaluate(() => parseFloat(getComputedStyle(document.querySelector('.step.now h2')).fontSize));
    const plain = await size();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    for (let i = 0; i < 4; i++) await page.locator('#larger').click();
    assert.ok(await size() > 2 * plain, 'letters grow');
    await browser.shoot(page, 'largest-1280.png');
    await audit(page, 'largest letters, light by the switch where dark is liked');
    await page.reload();
    assert.ok(await size() > 2 * plain, 'and stay large');
    await close();
    done('dark, light and large letters are kept');
  }

  {
    const {page, close} = await open(pageUrl, {
      before: () => Object.defineProperty(window, 'localStorage', {get() { throw new DOMException('no', 'SecurityError'); }}),
    });
    await page.locator('#dark').click();
    await page.locator('#larger').click();
    await page.keyboard.press('End');
    assert.equal((await shown(page)).id, 'step-' + count);
    await close();
    done('refused storage breaks nothing');
  }

  {
    const {page, close} = await open(pageUrl, {javaScriptEnabled: false});
    assert.equal(await page.locator('.step').count(), count);
    for (let i = 0; i < count; i++) {
      assert.ok(await page.locator('.step').nth(i).isVisible(), 'all steps are seen without a script');
    }
    for (const id of ['back', 'next', 'larger', 'dark']) {
      assert.ok(!await page.locator('#' + id).isVisible(), 'nothing is shown that would not work');
    }
    await browser.shoot(page, 'no-script-1280.png');
    const key = page.locator('.step .told a.key').first();
    await key.click();
    const fragment = page.url().split('#')[1];
    assert.match(fragment, /^step-\d+-/);
    const target = page.locator('svg g.name:target');
    assert.equal(await target.getAttribute('data-name'), await key.getAttribute('data-name'));
    await close();
    done('without a script all steps stand there, and names lead to their places');
  }

  {
    const {page, close} = await open(servedUrl);
    assert.equal(await page.locator('form').count(), 1);
    for (let i = 1; i < 3; i++) await page.keyboard.press('ArrowRight');
    assert.equal((await shown(page)).id, 'step-3');
    const picture = () => page.evaluate(() => document.querySelector('.step.now svg').innerHTML);
    const chest = page.locator('.field').filter({has: page.locator('label', {hasText: /^chest$/})});
    const input = chest.locator('input');
    assert.equal(await input.inputValue(), '38 1/2 in', 'measures stand as the table has them');
    const before = await picture();

    assert.ok(!await input.isVisible(), 'the list stands first');
    await page.locator('#measuring').click();
    assert.ok(!await page.locator('#steps').isVisible());
    await input.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('End');
    assert.equal((await shown(page)).id, 'step-3', 'keys in a field are for the field');
    await page.keyboard.press('Control+a');
    await page.keyboard.type('104 cm');
    await page.keyboard.press('Tab');
    await page.waitForFunction(() => document.getElementById('outcome').textContent !== '');
    assert.equal(await page.locator('#outcome').textContent(), 'Drawn with these measures.');
    assert.equal((await shown(page)).id, 'step-3', 'the step is kept');
    const after = await picture();
    assert.notEqual(after, before, 'the picture is another');
    assert.deepEqual((await shown(page)).current, ['#step-3']);

    await input.fill('104');
    await input.press('Enter');
    await chest.locator('.wrong p').first().waitFor();
    assert.match(await chest.locator('.wrong').textContent(), /has no unit.*Write `104 cm` or `104 in`/);
    assert.equal(await input.getAttribute('aria-invalid'), 'true');
    assert.match(await page.locator('#outcome').textContent(), /^Not drawn/);
    assert.equal(await picture(), after, 'the last good picture stays');
    assert.ok(await chest.locator('.wrong').isVisible());
    await browser.shoot(page, 'served-wrong-1280.png');
    await audit(page, 'served, with something wrong');

    await input.fill('38 1/2 cm');
    await input.press('Enter');
    await page.waitForFunction(() => /Likely/.test(document.querySelector('.field .wrong').textContent));
    assert.match(await chest.locator('.wrong').textContent(), /inches written as cm/);
    assert.equal(await picture(), after);

    await input.fill('38 1/2 in');
    await input.press('Enter');
    await page.waitForFunction(() => document.querySelectorAll('.wrong p').length === 0);
    assert.equal(await picture(), before, 'the first measures give the first picture');
    assert.equal(await input.getAttribute('aria-invalid'), null);

    const neckline = page.locator('.field').filter({has: page.locator('label', {hasText: /^neckline$/})}).locator('select');
    await neckline.selectOption('round');
    await page.waitForFunction(() => document.getElementById('measures').getAttribute('aria-busy') === null);
    await page.reload();
    assert.equal((await shown(page)).id, 'step-3', 'loading again keeps the step');
    assert.equal(await neckline.inputValue(), 'round', 'and what was chosen');
    done('served: measures and choices change the pictures, the step stays, what is wrong is told beside its field');

    await page.setViewportSize({width: 390, height: 800});
    await page.emulateMedia({colorScheme: 'dark'});
    await page.locator('#list').click();
    await browser.shoot(page, 'served-list-390.png');
    await audit(page, 'served, 390 wide, with the list');
    await page.locator('#steps a').nth(1).click();
    assert.equal((await shown(page)).id, 'step-2');
    assert.ok(!await page.locator('#side').isVisible(), 'the list makes room for the step');
    done('the list on a small screen');
    await close();
  }

  {
    const {page, close} = await open(servedUrl, {javaScriptEnabled: false, viewport: {width: 390, height: 800}});
    const input = page.locator('#measure-1');
    await input.fill('a lot');
    await page.getByRole('button', {name: 'Draw again'}).click();
    assert.match(await page.locator('#measure-1-wrong').textContent(), /cannot be read/);
    await input.fill('38 1/2 in');
    await page.getByRole('button', {name: 'Draw again'}).click();
    assert.equal(await page.locator('.wrong p').count(), 0);
    await close();
    done('the form works without a script too');
  }

}

try {
  await checks();
} finally {
  await browser.close();
}
