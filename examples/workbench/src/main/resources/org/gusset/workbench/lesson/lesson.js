(() => {
  'use strict';
  const root = document.documentElement;
  const main = document.getElementById('lesson');
  const side = document.getElementById('side');
  const back = document.getElementById('back');
  const next = document.getElementById('next');
  const place = document.getElementById('place');
  const said = document.getElementById('said');
  const baseTitle = document.title;

  // Storage may be refused, and then nothing is kept.
  const kept = {
    read(key) {
      try { return window.localStorage.getItem('gusset-lesson-' + key); } catch { return null; }
    },
    write(key, value) {
      try { window.localStorage.setItem('gusset-lesson-' + key, value); } catch { return; }
    },
  };

  let steps = [];
  let now = 0;

  function links() {
    return [...document.querySelectorAll('#steps a')];
  }

  function heading(step) {
    return step.querySelector('h2').textContent;
  }

  function announce(text) {
    said.textContent = text;
  }

  /** Shows one step; `how` tells whether it is told, and where the keyboard goes. */
  function show(index, how = {}) {
    if (!steps.length) return;
    const before = steps[now];
    now = Math.min(Math.max(index, 0), steps.length - 1);
    const step = steps[now];
    const held = before && before !== step && before.contains(document.activeElement);
    light(null);
    steps.forEach(s => s.classList.toggle('now', s === step));
    links().forEach((a, i) => {
      if (i === now) a.setAttribute('aria-current', 'step'); else a.removeAttribute('aria-current');
      if (i === now) intoView(a);
    });
    mark(back, now === 0);
    mark(next, now === steps.length - 1);
    const count = 'Step ' + (now + 1) + ' of ' + steps.length;
    place.textContent = count;
    document.title = count + ', ' + heading(step) + ': ' + baseTitle;
    frame();
    if (!how.first) {
      if (!how.kept) {
        window.scrollTo(0, 0);
        announce(count + '. ' + (step.dataset.piece ? step.dataset.piece + ': ' : '') + heading(step) + '.');
      }
      keepInAddress(step.id);
    }
    if (how.focus || held) step.querySelector('h2').focus({preventScroll: true});
  }

  function mark(button, off) {
    if (off) button.setAttribute('aria-disabled', 'true'); else button.removeAttribute('aria-disabled');
  }

  function intoView(link) {
    if (side.scrollHeight <= side.clientHeight) return;
    const inner = link.getBoundingClientRect();
    const outer = side.getBoundingClientRect();
    if (inner.top < outer.top || inner.bottom > outer.bottom) {
      side.scrollTop += inner.top - outer.top - outer.height / 3;
    }
  }

  function keepInAddress(id) {
    if (location.hash === '#' + id) return;
    try {
      history.replaceState(null, '', '#' + id);
    } catch {
      location.replace('#' + id);
    }
  }

  function fromAddress() {
    const found = /^#step-(\d+)(?:-|$)/.exec(location.hash);
    return found ? Number(found[1]) - 1 : -1;
  }

  function go(by, how) {
    if (now + by >= 0 && now + by < steps.length) show(now + by, how);
  }

  // Closer: the picture shows what is new, as large as the room for it is.
  const closer = document.getElementById('closer');
  let close = kept.read('closer') === 'yes';

  function frame() {
    const step = steps[now];
    const svg = step ? step.querySelector('svg') : null;
    if (!svg) return;
    if (!svg.dataset.whole) svg.dataset.whole = svg.getAttribute('viewBox');
    const box = close ? newest(step, svg) : null;
    svg.setAttribute('viewBox', box === null ? svg.dataset.whole : box.join(' '));
  }

  /** The frame around what the step introduces and its measured distances, or null if it introduces nothing that is drawn. */
  function newest(step, svg) {
    const fresh = new Set([...step.querySelectorAll('.told a.key')].map(a => a.dataset.name));
    const drawn = [...svg.querySelectorAll('g')].filter(g => fresh.has(g.dataset.name) || g.classList.contains('dimension'));
    const whole = svg.dataset.whole.split(' ').map(Number);
    let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
    for (const g of drawn) {
      const box = g.getBBox();
      if (box.width === 0 && box.height === 0) continue;
      left = Math.min(left, box.x);
      top = Math.min(top, box.y);
      right = Math.max(right, box.x + box.width);
      bottom = Math.max(bottom, box.y + box.height);
    }
    if (left > right) return null;
    // A lone point is not blown up to fill the wall.
    const margin = 0.06 * Math.max(right - left, bottom - top);
    const width = Math.max(right - left + 2 * margin, whole[2] / 5);
    const height = Math.max(bottom - top + 2 * margin, whole[3] / 5);
    return [(left + right - width) / 2, (top + bottom - height) / 2, width, height];
  }

  function closed() {
    closer.setAttribute('aria-pressed', String(close));
    frame();
  }
  closer.addEventListener('click', () => {
    close = !close;
    kept.write('closer', close ? 'yes' : 'no');
    closed();
  });

  // Light: the place that is pointed at, else the one that has the keyboard.
  let pointed = null;
  let focused = null;

  function named(target) {
    const found = target instanceof Element ? target.closest('[data-name]') : null;
    return found && steps[now] && steps[now].contains(found) ? found.dataset.name : null;
  }

  function light(name) {
    for (const lit of main.querySelectorAll('.lit')) lit.classList.remove('lit');
    if (name === null) return;
    for (const one of steps[now].querySelectorAll('[data-name]')) {
      if (one.dataset.name === name) one.classList.add('lit');
    }
  }

  function relight() {
    light(pointed !== null ? pointed : focused);
  }

  main.addEventListener('pointerover', e => { pointed = named(e.target); relight(); });
  main.addEventListener('pointerout', e => { pointed = named(e.relatedTarget); relight(); });
  main.addEventListener('focusin', e => { focused = named(e.target); relight(); });
  main.addEventListener('focusout', e => { focused = named(e.relatedTarget); relight(); });
  main.addEventListener('click', e => {
    const key = e.target instanceof Element ? e.target.closest('a.key') : null;
    if (key) {
      // The address keeps the step; without a script the same link lights its place as the target.
      e.preventDefault();
      key.focus();
    }
  });

  back.addEventListener('click', () => go(-1));
  next.addEventListener('click', () => go(1));
  document.getElementById('steps').addEventListener('click', e => {
    const link = e.target instanceof Element ? e.target.closest('a') : null;
    if (!link || e.ctrlKey || e.metaKey || e.shiftKey) return;
    e.preventDefault();
    const index = links().indexOf(link);
    if (narrow.matches) panelShown('');
    show(index, {focus: true});
  });
  window.addEventListener('hashchange', () => {
    const index = fromAddress();
    if (index >= 0 && index !== now) show(index);
  });

  function writesText(target) {
    return target instanceof Element
      && target.closest('input, textarea, select, [contenteditable]:not([contenteditable="false"])') !== null;
  }

  function canScroll(down) {
    const at = root.scrollTop;
    return down ? at + root.clientHeight < root.scrollHeight - 1 : at > 0;
  }

  document.addEventListener('keydown', e => {
    if (e.defaultPrevented || e.ctrlKey || e.metaKey || e.altKey || e.shiftKey || writesText(e.target)) return;
    if (e.key === 'ArrowRight') go(1);
    else if (e.key === 'ArrowLeft') go(-1);
    else if (e.key === 'Home') show(0);
    else if (e.key === 'End') show(steps.length - 1);
    // What the remote controls of lecturers send; where there is more to read the key keeps its own use.
    else if (e.key === 'PageDown' && !canScroll(true)) go(1);
    else if (e.key === 'PageUp' && !canScroll(false)) go(-1);
    else if (e.key === 'Escape') { pointed = null; focused = null; relight(); return; }
    else return;
    e.preventDefault();
  });

  // How large.
  const sizes = 5;
  // From this size on the list takes too much of the room, unless it is asked for.
  const listless = 2;
  const smaller = document.getElementById('smaller');
  const larger = document.getElementById('larger');
  let size = Number(kept.read('size'));
  if (!(Number.isInteger(size) && size >= 0 && size < sizes)) size = 0;
  function sized() {
    root.dataset.size = String(size);
    mark(smaller, size === 0);
    mark(larger, size === sizes - 1);
    around();
  }
  function resize(by) {
    const wanted = Math.min(Math.max(size + by, 0), sizes - 1);
    if (wanted === size) return;
    size = wanted;
    if (by > 0 && size >= listless) panelShown('');
    kept.write('size', String(size));
    sized();
    announce('Text size ' + (size + 1) + ' of ' + sizes + '.');
  }
  smaller.addEventListener('click', () => resize(-1));
  larger.addEventListener('click', () => resize(1));

  /** How much of the window's height the picture cannot have. */
  function around() {
    const top = document.querySelector('header.top').offsetHeight;
    const bar = document.querySelector('.bar').offsetHeight;
    root.style.setProperty('--around', 'calc(' + (top + bar) + 'px + 2.5rem)');
  }
  window.addEventListener('resize', around);

  // Dark and light.
  const dark = document.getElementById('dark');
  const likesDark = window.matchMedia('(prefers-color-scheme: dark)');
  let theme = kept.read('theme');
  if (theme !== 'dark' && theme !== 'light') theme = null;
  function themed() {
    if (theme) root.dataset.theme = theme; else delete root.dataset.theme;
    dark.setAttribute('aria-pressed', String(theme ? theme === 'dark' : likesDark.matches));
  }
  likesDark.addEventListener('change', themed);
  dark.addEventListener('click', () => {
    theme = (theme ? theme === 'dark' : likesDark.matches) ? 'light' : 'dark';
    kept.write('theme', theme);
    themed();
  });

  // The list at the side, or the measures in its place.
  const narrow = window.matchMedia('(max-width: 63.99rem)');
  const panels = [['list', 'steps'], ['measuring', 'measures']]
    .map(([button, part]) => ({button: document.getElementById(button), part: document.getElementById(part)}))
    .filter(panel => panel.button && panel.part);
  function panelShown(name) {
    side.hidden = !panels.some(panel => panel.button.id === name);
    for (const {button, part} of panels) {
      part.hidden = button.id !== name;
      button.setAttribute('aria-expanded', String(!part.hidden));
    }
    if (!side.hidden) side.scrollTop = 0;
    if (!side.hidden && steps.length) links().filter(a => a.hasAttribute('aria-current')).forEach(intoView);
  }
  for (const {button, part} of panels) {
    button.addEventListener('click', () => {
      const open = side.hidden || part.hidden;
      panelShown(open ? button.id : '');
      if (!narrow.matches) kept.write('panel', open ? button.id : 'none');
      else if (open) side.scrollIntoView({block: 'start'});
    });
  }
  function panelByWidth() {
    const wanted = kept.read('panel');
    const known = panels.some(panel => panel.button.id === wanted);
    panelShown(narrow.matches || size >= listless || wanted === 'none' ? '' : known ? wanted : 'list');
  }
  narrow.addEventListener('change', panelByWidth);

  function gather() {
    steps = [...main.querySelectorAll('.step')];
  }

  // Measures: only where the workbench serves the page.
  const form = document.getElementById('measures');
  if (form) {
    const outcome = document.getElementById('outcome');
    let asked = 0;
    let running = null;

    function tell(messages) {
      for (const box of form.querySelectorAll('.wrong')) box.replaceChildren();
      for (const field of form.elements) field.removeAttribute('aria-invalid');
      for (const message of messages) {
        const field = message.field ? document.getElementById(message.field) : null;
        const box = document.getElementById((field ? message.field : 'form') + '-wrong');
        const line = document.createElement('p');
        line.textContent = message.text;
        box.append(line);
        if (field) field.setAttribute('aria-invalid', 'true');
      }
      const first = form.querySelector('.wrong p');
      if (first && !form.hidden) first.parentElement.scrollIntoView({block: 'nearest'});
    }

    function take(answer) {
      tell(answer.messages);
      outcome.textContent = answer.outcome;
      if (!answer.steps) return;
      const old = steps[now];
      const key = old ? old.dataset.piece + '\n' + heading(old) : '';
      const read = new DOMParser().parseFromString(answer.steps, 'text/html');
      const fresh = read.querySelector('main');
      main.replaceChildren(...fresh.childNodes);
      document.getElementById('steps').replaceChildren(...read.getElementById('steps').childNodes);
      if (answer.rules !== undefined) {
        const sheet = new CSSStyleSheet();
        sheet.replaceSync(answer.rules);
        document.adoptedStyleSheets = [sheet];
      }
      gather();
      const same = steps.findIndex(s => s.dataset.piece + '\n' + heading(s) === key);
      show(same >= 0 ? same : now, {kept: true});
    }

    async function ask() {
      const mine = ++asked;
      if (running) running.abort();
      running = new AbortController();
      form.setAttribute('aria-busy', 'true');
      try {
        const response = await fetch(form.action, {
          method: 'POST',
          headers: {Accept: 'application/json'},
          body: new URLSearchParams(new FormData(form)),
          signal: running.signal,
          redirect: 'error',
        });
        if (!response.ok) throw new Error(response.status);
        const answer = await response.json();
        if (mine === asked) take(answer);
      } catch {
        if (mine === asked) {
          outcome.textContent = 'The workbench does not answer any more. Start it again, and load its new address.';
        }
      } finally {
        if (mine === asked) form.removeAttribute('aria-busy');
      }
    }

    form.addEventListener('submit', e => { e.preventDefault(); ask(); });
    form.addEventListener('change', ask);
  }

  gather();
  panelByWidth();
  themed();
  root.classList.add('scripted');
  sized();
  closed();
  show(Math.max(fromAddress(), 0), {first: true});
  // The step of the address is shown already; the head of the page shall not be scrolled away for it.
  window.addEventListener('load', () => {
    requestAnimationFrame(() => requestAnimationFrame(() => window.scrollTo(0, 0)));
  });
})();
