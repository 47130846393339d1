'use strict';

// The page that searches. It loads the matcher and the index when someone begins to type, and the texts for the
// words in context piece by piece, as classic scripts added to the page.
(() => {
  const KINDS = ['Builds', 'Estimates', 'Parts', 'Tools', 'Operations', 'Lessons', 'Entries'];
  const SHOWN = 5;
  const CONTEXT = 170;

  const here = document.currentScript.src.replace(/find\.js.*$/, '');
  const root = here.replace(/find\/$/, '');
  const field = document.getElementById('words');
  const status = document.getElementById('find-status');
  const results = document.getElementById('find-results');
  const lists = document.querySelector('.lists-section');
  const loaded = new Map();
  let shown = null;

  function load(name) {
    if (!loaded.has(name)) {
      loaded.set(name, new Promise((resolve, reject) => {
        const script = document.createElement('script');
        script.src = here + name;
        script.async = false;
        script.onload = resolve;
        script.onerror = reject;
        document.head.append(script);
      }));
    }
    return loaded.get(name);
  }

  function element(name, attributes, ...children) {
    const made = document.createElement(name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    made.append(...children);
    return made;
  }

  const marked = (text, isMarked) => journalFind.cut(text, isMarked).map(part => part.isMarked ? element('mark', {}, part.text) : part.text);

  function item(number, isMarked) {
    const { title, address, about } = journalFind.thing(number);
    const context = element('p', {});
    const fill = () => {
      const text = journalFind.text(number);
      if (text) { context.replaceChildren(...marked(journalFind.around(text, isMarked, CONTEXT), isMarked)); }
    };
    if (journalFind.text(number) === undefined) {
      load(journalFind.textsOf(number)).then(fill, () => {});
    } else {
      fill();
    }
    return element('li', {}, element('a', { href: root + address }, ...marked(title, isMarked)), element('p', { class: 'small about' }, ...marked(about, isMarked)), context);
  }

  function group(kind, numbers, isMarked) {
    const list = element('ul', { class: 'found' }, ...numbers.slice(0, SHOWN).map(number => item(number, isMarked)));
    const section = element('section', { class: 'section', 'aria-labelledby': `found-${kind}` },
      element('h2', { id: `found-${kind}` }, KINDS[kind] + ' ', element('span', { class: 'small' }, String(numbers.length))), list);
    if (numbers.length > SHOWN) {
      const more = element('button', { type: 'button' }, `Show all ${numbers.length}`);
      more.addEventListener('click', () => {
        const added = numbers.slice(SHOWN).map(number => item(number, isMarked));
        list.append(...added);
        more.remove();
        added[0].querySelector('a').focus();
      });
      section.append(more);
    }
    return section;
  }

  function show(query) {
    if (query === shown) { return; }
    shown = query;
    if (journalFind.split(query).length === 0) {
      results.replaceChildren();
      status.textContent = '';
      lists.hidden = false;
      return;
    }
    const { things, all, slips, isMarked } = journalFind.search(query);
    const groups = new Map();
    things.forEach(({ thing }) => {
      const { kind } = journalFind.thing(thing);
      groups.set(kind, [...groups.get(kind) ?? [], thing]);
    });
    results.replaceChildren(...[...groups].map(([kind, numbers]) => group(kind, numbers, isMarked)));
    lists.hidden = things.length > 0;
    status.textContent = things.length === 0
      ? query.trim().length === 1 ? 'Type one more letter.' : `Nothing found for “${query.trim()}”. Try fewer letters, or look through the lists.`
      : `${things.length} found` + (all ? '' : ', none with all the words') + (slips.length > 0 ? `; searched for ${[...new Set(slips)].map(word => `“${word}”`).join(', ')}` : '') + '.';
  }

  function keepInAddress(query) {
    try {
      history.replaceState(null, '', query === '' ? location.pathname : '#q=' + encodeURIComponent(query));
    } catch {
      // Some browsers refuse it for pages from the file system; then the way back begins with an empty field.
    }
  }

  function search() {
    load('matcher.js').then(() => load('index.js')).then(() => {
      show(field.value);
      keepInAddress(field.value.trim());
    }, () => {
      loaded.clear();
      status.textContent = 'The index could not be loaded. The lists hold everything that a search would find.';
    });
  }

  // Arrow keys go from the field through what was found and back; Enter in the field goes to the best.
  function move(event) {
    const steps = { ArrowDown: 1, ArrowUp: -1 };
    const stops = [field, ...results.querySelectorAll('a, button')];
    const at = stops.indexOf(document.activeElement);
    if (event.altKey || event.ctrlKey || event.metaKey || at < 0) { return; }
    if (event.key in steps) {
      event.preventDefault();
      stops[Math.min(Math.max(at + steps[event.key], 0), stops.length - 1)].focus();
    } else if (event.key === 'Enter' && at === 0 && stops.length > 1) {
      event.preventDefault();
      stops[1].focus();
    } else if (event.key === 'Escape' && at > 0) {
      field.focus();
    }
  }

  function readAddress() {
    if (location.hash.startsWith('#q=')) {
      try {
        field.value = decodeURIComponent(location.hash.slice(3));
        search();
      } catch {
        // An address that is no query.
      }
    }
  }

  document.querySelector('.find').hidden = false;
  field.addEventListener('input', search);
  document.addEventListener('keydown', move);
  addEventListener('hashchange', readAddress);
  readAddress();
  if (matchMedia('(hover: hover)').matches) { field.focus({ preventScroll: true }); }
})();
