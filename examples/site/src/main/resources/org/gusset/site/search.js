// Looks through all pages, without a server: the index is a script, which is loaded when it is first needed.
'use strict';
(() => {
  const top = new URL('../', document.currentScript.src);
  const field = document.getElementById('q');
  const list = document.getElementById('found');
  const results = document.getElementById('results');
  const told = document.getElementById('told');
  const OFFERED = 8;
  const LISTED = 60;
  // Whoever looks for a word of the trade wants to be told how; who wants a message has its code, or several of its words.
  const WEIGHTS = {'How to': 1.2, 'Tutorial': 1.1, 'Background': 0.7, 'Messages': 0.5, 'Draft': 0.6, 'The project': 0.3};
  const FOR_ONE_WORD = {...WEIGHTS, 'Background': 0.3, 'Messages': 0.15, 'The project': 0.1};
  const CODE = /^\p{L}{3}\d{3}$/u;
  const TITLE = 20;
  const HEADING = 8;

  const plain = text => text.toLowerCase().normalize('NFD').replace(/[\u0300-\u036f]/g, '');

  /** The words that are looked for, without endings: pleats and printing find pleat and print. */
  function wordsOf(asked) {
    return (plain(asked).match(/[\p{L}\p{N}_]+/gu) || []).map(word => {
      if (word.length > 6 && word.endsWith('ing')) return word.slice(0, -3);
      if (word.length > 3 && word.endsWith('s') && !word.endsWith('ss')) return word.slice(0, -1);
      return word;
    });
  }

  const wordly = /[\p{L}\p{N}_]/u;

  /** How well a word is found: 3 whole, 2 as the beginning of a word, 1 within one; and how often. */
  function found(word, text) {
    let best = 0;
    let count = 0;
    for (let at = text.indexOf(word); at >= 0 && count < 30; at = text.indexOf(word, at + word.length)) {
      const begins = at === 0 || !wordly.test(text[at - 1]);
      const end = text[at + word.length];
      const ends = end === undefined || !wordly.test(end);
      const grade = begins ? (ends ? 3 : 2) : (word.length > 2 ? 1 : 0);
      if (grade > 0) count++;
      best = Math.max(best, grade);
    }
    return {best, count};
  }

  let parts;
  let loading;

  function load() {
    loading = loading || new Promise((done, failed) => {
      const script = document.createElement('script');
      script.src = new URL('assets/search-index.js', top).href;
      script.onload = () => {
        parts = window.gussetPages.flatMap(([address, section, title, texts]) =>
          texts.map(([anchor, heading, words], number) => ({
            address, section, title, anchor, heading, words, number,
            plainTitle: plain(title), plainHeading: plain(heading), stemHeading: wordsOf(heading).join(' '), plainWords: plain(words),
          })));
        done();
      };
      script.onerror = failed;
      document.head.append(script);
    });
    return loading;
  }

  /** The parts of pages in which all words are found, the best first. */
  function find(asked) {
    const words = wordsOf(asked);
    if (words.length === 0) return [];
    const phrase = plain(asked).trim();
    const stems = words.join(' ');
    const weights = words.length > 1 || CODE.test(phrase) ? WEIGHTS : FOR_ONE_WORD;
    const hits = [];
    for (const part of parts) {
      let score = 0;
      let inTitle = 0;
      let all = true;
      for (const word of words) {
        const title = found(word, part.plainTitle);
        const heading = found(word, part.plainHeading);
        const body = found(word, part.plainWords);
        if (title.best + heading.best + body.best === 0) {
          all = false;
          break;
        }
        if (title.best > 1) inTitle++;
        score += title.best * TITLE * (part.number === 0 ? 1 : 0.3) + heading.best * HEADING
          + (body.count > 0 ? body.best * (1 + Math.log2(1 + body.count) / 3) : 0);
      }
      if (!all) continue;
      if (part.number === 0) {
        if (inTitle === words.length) score += 60;
        if (part.plainTitle === phrase) score += 200;
      }
      if (part.stemHeading === stems) score += part.section === 'Background' ? 12 : 120;
      if (words.length > 1) {
        if (part.plainHeading.includes(phrase)) score += 30;
        if (part.plainWords.includes(phrase)) score += 12;
      }
      hits.push({part, score: score * (weights[part.section] || 1)});
    }
    hits.sort((a, b) => b.score - a.score);
    return hits;
  }

  /** At most so many, and not more than two parts of one page. */
  function few(hits, most) {
    const perPage = new Map();
    const kept = [];
    for (const hit of hits) {
      const count = perPage.get(hit.part.address) || 0;
      if (count < 2 && kept.length < most) {
        perPage.set(hit.part.address, count + 1);
        kept.push(hit);
      }
    }
    return kept;
  }

  const place = part => new URL(part.address + (part.anchor ? '#' + part.anchor : ''), top).href;

  function span(kind, text) {
    const made = document.createElement('span');
    made.className = kind;
    made.textContent = text;
    return made;
  }

  /** Some words round the first that was found, with all that were found marked. */
  function excerpt(part, words) {
    const lower = part.words.toLowerCase();
    const first = Math.min(...words.map(w => lower.indexOf(w)).filter(at => at >= 0), lower.length);
    const from = first === lower.length ? 0 : Math.max(0, lower.lastIndexOf(' ', Math.max(0, first - 50)) + 1);
    const end = from + 170;
    const text = (from > 0 ? '... ' : '')
      + (end < part.words.length ? part.words.slice(from, end).replace(/\S*$/, '') + '...' : part.words.slice(from));
    const made = span('hit-words', '');
    const pattern = new RegExp('(' + words.join('|') + ')', 'giu');
    for (const piece of text.split(pattern)) {
      if (words.includes(piece.toLowerCase())) {
        const marked = document.createElement('mark');
        marked.textContent = piece;
        made.append(marked);
      } else {
        made.append(piece);
      }
    }
    return made;
  }

  function fill(into, part, words, title) {
    title.textContent = part.title + (part.heading ? ': ' + part.heading : '');
    into.append(title);
    if (part.section) into.append(span('hit-where', part.section));
    if (part.words) into.append(excerpt(part, words));
  }

  // ---- the offers below the field

  let chosen = -1;

  function close() {
    list.hidden = true;
    list.replaceChildren();
    field.setAttribute('aria-expanded', 'false');
    field.removeAttribute('aria-activedescendant');
    chosen = -1;
  }

  function choose(number) {
    const options = [...list.children];
    if (options.length === 0) return;
    chosen = (number + options.length) % options.length;
    options.forEach((option, i) => option.setAttribute('aria-selected', String(i === chosen)));
    field.setAttribute('aria-activedescendant', options[chosen].id);
    options[chosen].scrollIntoView({block: 'nearest'});
  }

  function offer() {
    const words = wordsOf(field.value);
    close();
    if (words.length === 0 || parts === undefined) return;
    for (const {part} of few(find(field.value), OFFERED)) {
      const option = document.createElement('li');
      option.id = 'found-' + list.children.length;
      option.setAttribute('role', 'option');
      option.setAttribute('aria-selected', 'false');
      option.dataset.to = place(part);
      fill(option, part, words, span('hit-title', ''));
      option.addEventListener('mousedown', event => {
        event.preventDefault();
        location.href = option.dataset.to;
      });
      list.append(option);
    }
    list.hidden = list.children.length === 0;
    field.setAttribute('aria-expanded', String(!list.hidden));
  }

  // ---- the page of results

  function listAll() {
    const words = wordsOf(field.value);
    results.replaceChildren();
    if (words.length === 0) {
      told.textContent = 'Type what you look for into the field above.';
      return;
    }
    const hits = few(find(field.value), LISTED);
    told.textContent = hits.length === 0
      ? 'Nothing was found for ' + field.value + '. Try fewer words, or a word of the trade.'
      : hits.length + (hits.length === LISTED ? ' or more' : '') + (hits.length === 1 ? ' place' : ' places')
        + ' found for ' + field.value + '.';
    for (const {part} of hits) {
      const item = document.createElement('li');
      const link = document.createElement('a');
      link.href = place(part);
      fill(item, part, words, link);
      results.append(item);
    }
  }

  const answer = () => load().then(results ? listAll : offer).catch(() => {
    if (told) told.textContent = 'The index of the search could not be loaded.';
  });

  field.addEventListener('focus', () => load().catch(() => {}), {once: true});
  field.addEventListener('input', answer);
  field.addEventListener('blur', close);
  field.addEventListener('keydown', event => {
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      if (!list.hidden) {
        event.preventDefault();
        choose(event.key === 'ArrowDown' ? chosen + 1 : (chosen < 0 ? -1 : chosen - 1));
      }
    } else if (event.key === 'Enter' && chosen >= 0) {
      event.preventDefault();
      location.href = list.children[chosen].dataset.to;
    } else if (event.key === 'Escape') {
      close();
    }
  });
  document.addEventListener('keydown', event => {
    const typing = event.target.closest && event.target.closest('input, textarea, select, [contenteditable]');
    if (event.key === '/' && !typing && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      field.focus();
      field.select();
    }
  });

  if (results) {
    field.value = new URLSearchParams(location.search).get('q') || '';
    answer();
    if (field.value === '') field.focus();
  }
})();
