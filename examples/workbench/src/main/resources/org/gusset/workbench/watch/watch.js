(() => {
  'use strict';
  const root = document.documentElement;
  const at = id => document.getElementById(id);
  const lines = at('lines');
  const pictures = at('pictures');
  const card = at('card');
  root.classList.add('scripted');

  const kept = {
    read(key) { try { return window.localStorage.getItem('gusset-watch-' + key); } catch { return null; } },
    write(key, value) { try { window.localStorage.setItem('gusset-watch-' + key, value); } catch { return; } },
  };

  let view = null;
  let body = '';
  let beside = [];
  let step = 0;
  /** The version that was told of last. */
  let newest = 0;
  /** What is chosen: pairs of piece and name. */
  let chosen = [];

  function make(tag, className, text) {
    const element = document.createElement(tag);
    if (className) element.className = className;
    if (text !== undefined) element.textContent = text;
    return element;
  }

  function fields() {
    return {body, beside: beside.join('\n'), step: String(step)};
  }

  // Asking: one question at a time, the newest wins.
  let asking = null;
  let waiting = null;

  function ask(path, form) {
    waiting = {path, form};
    if (!asking) run();
  }

  async function run() {
    while (waiting) {
      const {path, form} = waiting;
      waiting = null;
      asking = path;
      try {
        const about = new URLSearchParams({...(form || {}), ...fields()});
        const response = form
          ? await fetch(path, {method: 'POST', body: about, redirect: 'error'})
          : await fetch(path + '?' + about, {redirect: 'error'});
        if (response.status === 500) {
          at('state').textContent = await response.text();
          asking = null;
          continue;
        }
        if (!response.ok) throw new Error(response.status);
        show(await response.json());
        // What was written on the card is told of too, mostly before it is answered: that answer shows it already.
        if (!waiting && view.version < newest) waiting = {path: 'view'};
      } catch {
        away();
      }
      asking = null;
    }
  }

  function away() {
    at('state').textContent = 'The workbench does not answer. The page goes on when it does.';
  }

  function show(now) {
    const before = view;
    view = now;
    step = now.step;
    at('title').textContent = now.title || now.file;
    document.title = (now.title || now.file) + ': a draft at work';
    const faults = now.messages.filter(m => m.error).length;
    const stale = now.bodies.some(b => b.stale);
    at('state').textContent = now.file + ': '
      + (now.trouble || (faults ? faults + (faults === 1 ? ' mistake' : ' mistakes') : 'no mistake'))
      + (stale && now.bodies.some(b => b.pictures.length) ? '; the picture is the last good one' : proved(now));
    showText(before);
    showPictures();
    showCard();
    showSeams();
    showSteps();
    light();
    root.dataset.version = String(now.version);
  }

  /** How the seams and checks of all bodies that are shown came out, in a few words. */
  function proved(now) {
    const all = now.bodies.flatMap(one => one.seams);
    const failed = all.filter(seam => seam.state === 'fails').length;
    const open = all.filter(seam => seam.state === 'not known').length;
    if (!all.length) return '';
    if (failed) return '; ' + failed + ' of ' + all.length + ' seams and checks ' + (failed === 1 ? 'fails' : 'fail');
    return open ? '; ' + open + ' of ' + all.length + ' seams and checks could not be tried' : '; no seam or check fails';
  }

  // The text.
  let laid = [];
  function item(text) {
    const box = make('li');
    const line = make('button', 'line', text || ' ');
    line.type = 'button';
    line.tabIndex = -1;
    line.setAttribute('aria-pressed', 'false');
    box.append(line);
    return box;
  }

  /** Makes new lines where the text is another; those before and behind stay as they are. */
  function layLines(texts) {
    const most = Math.min(laid.length, texts.length);
    let before = 0;
    while (before < most && laid[before] === texts[before]) before++;
    let behind = 0;
    while (behind < most - before && laid[laid.length - 1 - behind] === texts[texts.length - 1 - behind]) behind++;
    const old = [...lines.children].slice(before, laid.length - behind);
    const next = lines.children[laid.length - behind] || null;
    for (const one of old) one.remove();
    for (const text of texts.slice(before, texts.length - behind)) lines.insertBefore(item(text), next);
    const same = texts.length === laid.length;
    for (let i = before; i < texts.length - (same ? behind : 0); i++) {
      const line = lines.children[i].firstElementChild;
      line.dataset.line = String(i + 1);
      line.setAttribute('aria-label', 'Line ' + (i + 1) + ': ' + (texts[i].trim() || 'empty'));
    }
    laid = texts;
  }

  function showText(before) {
    const top = lines.scrollTop;
    const current = currentLine();
    const focused = lines.contains(document.activeElement);
    layLines(view.text.replace(/\r?\n$/, '').split(/\r?\n/));
    // A line that is still there keeps its place, whatever was put before it.
    if (!lines.querySelector('.line[tabindex="0"]')) walkTo(Math.min(current, laid.length), focused);
    const pressed = lines.querySelector('.line[aria-pressed="true"]');
    if (pressed) lit = Number(pressed.dataset.line);
    for (const old of lines.querySelectorAll('.wrong, .advice')) old.remove();
    for (const old of lines.querySelectorAll('.faulty')) old.classList.remove('faulty');
    const others = at('elsewhere');
    others.replaceChildren();
    if (view.trouble) others.append(make('p', '', view.trouble));
    for (const message of view.messages) {
      const told = make('div', message.error ? 'wrong' : 'advice');
      told.append((message.body ? message.body + ': ' : '') + message.text + ' (' + message.code + ')');
      for (const hint of message.hints) told.append(make('span', 'hint', hint));
      const item = message.line ? lines.children[message.line - 1] : null;
      if (item) {
        item.append(told);
        if (message.error) item.firstElementChild.classList.add('faulty');
      } else if (message.error) {
        others.append(told);
      }
    }
    lines.scrollTop = top;
    const first = lines.querySelector('.faulty');
    const had = before && before.messages.some(m => m.error);
    if (first && !had) first.parentElement.scrollIntoView({block: 'nearest'});
  }

  function lineButtons() { return [...lines.querySelectorAll('.line')]; }

  function currentLine() {
    const line = lines.querySelector('.line[tabindex="0"]');
    return line ? Number(line.dataset.line) : 1;
  }

  function walkTo(number, focus) {
    for (const old of lines.querySelectorAll('.line[tabindex="0"]')) old.tabIndex = -1;
    const line = lines.children[number - 1] ? lines.children[number - 1].firstElementChild : null;
    if (!line) return;
    line.tabIndex = 0;
    if (focus) line.focus();
  }

  lines.addEventListener('keydown', e => {
    const all = lineButtons();
    const now = currentLine();
    const to = {ArrowDown: now + 1, ArrowUp: now - 1, Home: 1, End: all.length}[e.key];
    if (to === undefined || e.ctrlKey || e.metaKey || e.altKey) return;
    e.preventDefault();
    walkTo(Math.min(Math.max(to, 1), all.length), true);
  });
  lines.addEventListener('click', e => {
    const line = e.target.closest('.line');
    if (!line) return;
    const number = Number(line.dataset.line);
    walkTo(number, false);
    chosen = of(number);
    light(number);
  });

  /** What a line makes, or else what it speaks of. */
  function of(line) {
    const made = view.names.filter(n => n.line === line);
    return (made.length ? made : (view.speaks[line] || []).map(i => view.names[i])).map(n => [n.piece, n.name]);
  }

  // The pictures.
  let count = 0;
  function picture(one) {
    const read = new DOMParser().parseFromString(one.svg, 'image/svg+xml');
    const figure = make('figure', 'picture');
    figure.dataset.piece = one.piece;
    if (read.documentElement.localName !== 'svg') return figure;
    const svg = document.adoptNode(read.documentElement);
    const prefix = 'picture-' + (++count) + '-';
    for (const element of [svg, ...svg.querySelectorAll('*')]) {
      if (element.id) element.id = prefix + element.id;
      for (const name of ['aria-labelledby', 'aria-describedby']) {
        const value = element.getAttribute(name);
        if (value) element.setAttribute(name, value.split(' ').map(id => prefix + id).join(' '));
      }
      const clip = element.getAttribute('clip-path');
      if (clip) element.setAttribute('clip-path', clip.replace('url(#', 'url(#' + prefix));
    }
    svg.removeAttribute('width');
    svg.removeAttribute('height');
    figure.append(svg);
    return figure;
  }

  /** The pictures that are shown, by body and piece, each with the text it was made of. */
  let hung = new Map();

  function showPictures() {
    const before = hung;
    const made = [];
    hung = new Map();
    pictures.replaceChildren(...view.bodies.map(one => {
      const of = make('section', 'of' + (one.stale ? ' stale' : ''));
      of.append(make('h3', '', one.name));
      const sheets = make('div', 'sheets');
      for (const shown of one.pictures) {
        const key = JSON.stringify([one.name, shown.piece]);
        const old = before.get(key);
        const figure = old && old.svg === shown.svg ? old.figure : picture(shown);
        if (!old || old.figure !== figure) made.push(figure);
        const caption = figure.querySelector('figcaption');
        if (caption) caption.remove();
        if (one.pictures.length > 1) figure.prepend(make('figcaption', '', shown.piece));
        hung.set(key, {svg: shown.svg, figure});
        sheets.append(figure);
      }
      if (!one.pictures.length) sheets.append(make('p', '', 'Nothing is drawn yet.'));
      of.append(sheets);
      return of;
    }));
    for (const figure of made) if (figure.lastElementChild && figure.lastElementChild.localName === 'svg') close(figure.lastElementChild);
  }

  /** Frames a picture by what is drawn; the lesson's own frame is as wide for all of its pieces. */
  function close(svg) {
    const whole = (svg.getAttribute('viewBox') || '').split(' ').map(Number);
    let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
    for (const part of svg.querySelectorAll(':scope > g')) {
      const box = part.getBBox();
      if (box.width === 0 && box.height === 0) continue;
      left = Math.min(left, box.x);
      top = Math.min(top, box.y);
      right = Math.max(right, box.x + box.width);
      bottom = Math.max(bottom, box.y + box.height);
    }
    if (!(left < right) || whole.length !== 4) return;
    const margin = 0.02 * Math.max(right - left, bottom - top);
    svg.setAttribute('viewBox', [left - margin, top - margin, right - left + 2 * margin, bottom - top + 2 * margin].join(' '));
  }

  pictures.addEventListener('click', e => {
    const found = e.target instanceof Element ? e.target.closest('[data-name]') : null;
    const figure = found ? found.closest('figure') : null;
    if (!figure) return;
    const one = view.names.find(n => n.piece === figure.dataset.piece && n.name === found.dataset.name)
      || view.names.find(n => n.name === found.dataset.name);
    chosen = [[one ? one.piece : figure.dataset.piece, found.dataset.name]];
    light(one ? one.line : 0);
    const line = one && one.line ? lines.querySelector('.line[data-line="' + one.line + '"]') : null;
    if (line) {
      walkTo(one.line, false);
      line.scrollIntoView({block: 'nearest'});
    }
  });

  let lit = 0;
  function light(line) {
    if (line !== undefined) lit = line;
    for (const old of pictures.querySelectorAll('.lit')) old.classList.remove('lit');
    for (const figure of pictures.querySelectorAll('figure')) {
      for (const named of figure.querySelectorAll('[data-name]')) {
        const hit = chosen.some(([piece, name]) => name === named.dataset.name && (!piece || piece === figure.dataset.piece));
        if (hit) named.classList.add('lit');
      }
    }
    for (const old of lines.querySelectorAll('.line[aria-pressed="true"]')) old.setAttribute('aria-pressed', 'false');
    if (lines.children[lit - 1]) lines.children[lit - 1].firstElementChild.setAttribute('aria-pressed', 'true');
    const sums = at('sums');
    sums.replaceChildren();
    for (const [piece, name] of chosen) {
      const one = view.names.find(n => n.piece === piece && n.name === name);
      sums.append(make('dt', '', (piece ? piece + '.' : '') + name));
      sums.append(make('dd', '', one ? one.sentence : 'It is not in this draft any more.'));
    }
    at('none').hidden = chosen.length > 0;
    if (!chosen.length) at('none').textContent = lit
      ? 'Line ' + lit + ' makes nothing that has a sum, and speaks of nothing that has one.'
      : 'Choose a point or an edge in the picture, or a line of the draft.';
  }

  // The steps.
  function showSteps() {
    const heading = step ? view.steps[step - 1] : null;
    at('whole').setAttribute('aria-pressed', String(step === 0));
    mark(at('back'), step === 0);
    mark(at('next'), step >= view.steps.length);
    at('place').textContent = heading
      ? 'Step ' + step + ' of ' + view.steps.length + ': ' + (heading.piece ? heading.piece + ', ' : '') + heading.title
      : 'Each piece as a whole, as large as there is room for it: not all to one scale';
    at('says').replaceChildren(...view.says.map(words => make('p', '', words)));
  }

  function mark(button, off) {
    if (off) button.setAttribute('aria-disabled', 'true'); else button.removeAttribute('aria-disabled');
  }

  function go(to) {
    if (!view || to < 0 || to > view.steps.length || to === step) return;
    step = to;
    ask('view');
  }
  at('whole').addEventListener('click', () => go(0));
  at('back').addEventListener('click', () => go(step - 1));
  at('next').addEventListener('click', () => go(step + 1));
  document.addEventListener('keydown', e => {
    const writes = e.target instanceof Element && e.target.closest('input, select, textarea, #lines');
    if (writes || e.defaultPrevented || e.ctrlKey || e.metaKey || e.altKey) return;
    if (e.key === 'ArrowRight') go(step + 1);
    else if (e.key === 'ArrowLeft') go(step - 1);
    else return;
    e.preventDefault();
  });

  // The measuring card.
  function showCard() {
    showBodies();
    const now = view.card;
    const all = now ? [...now.measures, ...now.choices] : [];
    const key = JSON.stringify([body, all.map(f => [f.id, f.label, f.words, f.notes, reach(f.slide)])]);
    if (card.dataset.key !== key) {
      card.dataset.key = key;
      card.replaceChildren();
      if (now) {
        card.append(...now.measures.map(field));
        if (now.choices.length) card.append(make('h3', '', 'Choices'));
        card.append(...now.choices.map(field));
      }
    }
    for (const one of all) {
      const input = at(one.id);
      const slider = at(one.id + '-slider');
      const busy = document.activeElement;
      if (busy !== input && busy !== slider && input.value !== one.text) input.value = one.text;
      if (slider && busy !== slider) stand(slider, one.slide);
      if (one.wrong.length) input.setAttribute('aria-invalid', 'true'); else input.removeAttribute('aria-invalid');
      at(one.id + '-wrong').replaceChildren(...one.wrong.map(text => make('p', '', text)));
    }
  }

  /** What a slider is made of; where it stands may change. */
  function reach(slide) { return slide ? [slide.from, slide.to, slide.step, slide.unit, slide.parts] : null; }

  /** An amount as it is written: 30.5 cm, or 38 5/8 in by the tape. */
  function written(value, {unit, parts}) {
    let number = String(Number(value.toFixed(6)));
    if (parts) {
      let top = Math.round(value * parts);
      let under = parts;
      const whole = Math.floor(top / parts);
      top -= whole * parts;
      while (top > 0 && top % 2 === 0) { top /= 2; under /= 2; }
      number = top === 0 ? String(whole) : (whole ? whole + ' ' : '') + top + '/' + under;
    }
    return number + (unit ? (unit === '%' ? '' : ' ') + unit : '');
  }

  function stand(slider, slide) {
    if (slide.at !== undefined) slider.value = String(slide.at);
    slider.setAttribute('aria-valuetext', written(Number(slider.value), slide));
  }

  function field(one) {
    const box = make('div', 'field');
    const label = make('label', '', one.label);
    label.htmlFor = one.id;
    const input = make(one.words.length ? 'select' : 'input');
    input.id = one.id;
    input.name = one.id;
    input.setAttribute('aria-describedby', one.id + '-wrong ' + one.id + '-note');
    if (one.words.length) {
      for (const word of one.words) input.append(new Option(word, word));
    } else {
      input.type = 'text';
      input.spellcheck = false;
      input.maxLength = 60;
    }
    input.value = one.text;
    box.append(label, input);
    if (one.slide) {
      const slider = make('input');
      slider.type = 'range';
      slider.id = one.id + '-slider';
      [slider.min, slider.max, slider.step] = reach(one.slide).map(String);
      slider.setAttribute('aria-label', one.label + ', by sliding');
      stand(slider, one.slide);
      slider.addEventListener('input', () => {
        input.value = written(Number(slider.value), one.slide);
        slider.setAttribute('aria-valuetext', input.value);
        write();
      });
      box.append(slider);
    }
    input.addEventListener('input', write);
    const wrong = make('div', 'wrong');
    wrong.id = one.id + '-wrong';
    wrong.setAttribute('aria-live', 'polite');
    const note = make('p', 'note', one.notes);
    note.id = one.id + '-note';
    box.append(wrong, note);
    return box;
  }

  function write() {
    ask('card', Object.fromEntries(new FormData(card)));
  }
  card.addEventListener('submit', e => { e.preventDefault(); write(); });
  at('clear').addEventListener('click', () => {
    if (document.activeElement && card.contains(document.activeElement)) document.activeElement.blur();
    ask('clear', {});
  });

  function showBodies() {
    const select = at('body');
    const key = JSON.stringify(view.known);
    if (!body) body = view.bodies[0].name;
    if (select.dataset.key !== key) {
      select.dataset.key = key;
      select.replaceChildren(...view.known.map(name => new Option(name, name)));
    }
    select.value = body;
    const box = at('beside');
    box.hidden = view.known.length < 2;
    const boxes = JSON.stringify([view.known, body]);
    if (box.dataset.key === boxes) return;
    box.dataset.key = boxes;
    box.replaceChildren(box.querySelector('legend'), ...view.known.filter(name => name !== body).map(name => {
      const label = make('label');
      const tick = make('input');
      tick.type = 'checkbox';
      tick.checked = beside.includes(name);
      tick.addEventListener('change', () => {
        beside = tick.checked ? [...beside, name] : beside.filter(other => other !== name);
        ask('view');
      });
      label.append(tick, name);
      return label;
    }));
  }
  at('body').addEventListener('change', () => {
    body = at('body').value;
    beside = beside.filter(name => name !== body);
    ask('view');
  });

  // The seams.
  function showSeams() {
    at('seams').replaceChildren(...view.bodies.flatMap(one => one.seams.map(seam => {
      const item = make('li', seam.state === 'fails' ? 'fails' : '');
      const head = make('div');
      head.append(make('span', 'state', seam.state), ' ' + (view.bodies.length > 1 ? one.name + ': ' : '') + seam.name + ' ');
      if (seam.line) {
        const to = make('button', '', 'line ' + seam.line);
        to.type = 'button';
        to.addEventListener('click', () => {
          walkTo(seam.line, true);
          chosen = of(seam.line);
          light(seam.line);
        });
        head.append(to);
      }
      item.append(head, make('p', '', seam.figures));
      return item;
    })));
  }

  // Dark and light.
  const likesDark = window.matchMedia('(prefers-color-scheme: dark)');
  let theme = kept.read('theme');
  if (theme !== 'dark' && theme !== 'light') theme = null;
  function themed() {
    if (theme) root.dataset.theme = theme; else delete root.dataset.theme;
    at('dark').setAttribute('aria-pressed', String(theme ? theme === 'dark' : likesDark.matches));
  }
  likesDark.addEventListener('change', themed);
  at('dark').addEventListener('click', () => {
    theme = (theme ? theme === 'dark' : likesDark.matches) ? 'light' : 'dark';
    kept.write('theme', theme);
    themed();
  });
  themed();

  // News: the browser connects again by itself. It keeps few connections to one site, so a page that nobody sees gives its own back.
  let news = null;
  function listen() {
    news = new EventSource('news');
    news.addEventListener('message', e => {
      newest = Number(e.data);
      // A workbench that was started again counts from the beginning.
      if (!asking && (!view || view.version !== newest)) ask('view');
    });
    news.addEventListener('error', () => {
      // A connection that was cut is made again; one that was refused is not.
      if (news.readyState === EventSource.CLOSED) {
        at('state').textContent = 'This page gets no more news: the workbench was started again, or too many pages are open. Open the address that it tells now.';
      } else away();
    });
    news.addEventListener('open', () => { if (view) ask('view'); });
  }
  function seen() {
    const hidden = document.visibilityState === 'hidden';
    if (hidden && news) {
      news.close();
      news = null;
    } else if (!hidden && !news) listen();
  }
  document.addEventListener('visibilitychange', seen);
  seen();
})();
