// The pictures of an entry: Enter goes from field to field, what was changed is saved when a field is left, balloons are placed by
// a click and dragged, and pictures are dragged by their number. Without this script the form does the same with its buttons.
'use strict';
(() => {
  const form = document.getElementById('pictures');
  const told = document.getElementById('told');
  const list = form.querySelector('.pictures-list');
  let saving = Promise.resolve(), isChanged = false;
  document.documentElement.classList.add('with-script');
  document.querySelector('.with-script-only').hidden = false;

  const field = (picture, name) => form.elements[`${name}-${picture.dataset.id}`];
  const pictures = () => [...list.querySelectorAll('.picture')];

  function tell(words, isDone) {
    const line = document.createElement('p');
    line.className = isDone ? 'told' : 'told not';
    line.textContent = words;
    told.replaceChildren(line);
  }

  // One after the other, so that each is held against what the one before has written.
  function save() {
    isChanged = true;
    saving = saving.then(async () => {
      const body = new FormData(form);
      const sent = pictures().map(picture => ({ picture, caption: field(picture, 'caption').value, alt: field(picture, 'alt').value, marks: field(picture, 'marks').value, never: field(picture, 'never').checked }));
      try {
        const answer = await fetch(form.action, { method: 'POST', body, headers: { Accept: 'application/json' } });
        const { done, said } = answer.headers.get('content-type')?.startsWith('application/json') ? await answer.json() : { done: false, said: await answer.text() };
        tell(said, done);
        if (!done) { return; }
        isChanged = false;
        for (const { picture, caption, alt, marks, never } of sent) {
          field(picture, 'was-caption').value = caption;
          field(picture, 'was-alt').value = alt;
          field(picture, 'was-marks').value = marks;
          const before = field(picture, 'was-never');
          if (before && !never) { before.remove(); }
          if (!before && never) {
            const made = document.createElement('input');
            Object.assign(made, { type: 'hidden', name: `was-never-${picture.dataset.id}`, value: 'yes' });
            picture.append(made);
          }
        }
      } catch {
        tell('The bench does not answer. What you typed is still here; it is saved with the next change.', false);
      }
    });
    return saving;
  }

  // Balloons

  const mark = /^\s*(\d+(?:\.\d+)?)\s+(\d+(?:\.\d+)?)\s+(.*\S)\s*$/;
  const svg = name => document.createElementNS('http://www.w3.org/2000/svg', name);

  function draw(picture) {
    const plate = picture.querySelector('.plate');
    plate.querySelector('svg')?.remove();
    const marks = field(picture, 'marks').value.split('\n').map(line => mark.exec(line)).filter(Boolean);
    if (marks.length === 0) { return; }
    const over = svg('svg');
    marks.forEach(([, x, y], i) => {
      const balloon = svg('g'), circle = svg('circle'), text = svg('text');
      circle.setAttribute('cx', `${x}%`); circle.setAttribute('cy', `${y}%`); circle.setAttribute('r', '14');
      text.setAttribute('x', `${x}%`); text.setAttribute('y', `${y}%`); text.textContent = i + 1;
      balloon.append(circle, text);
      balloon.addEventListener('pointerdown', event => drag(event, picture, i, balloon));
      over.append(balloon);
    });
    plate.append(over);
  }

  function at(event, picture) {
    const box = picture.querySelector('.plate').getBoundingClientRect();
    const cent = (place, from, length) => Math.round(Math.min(100, Math.max(0, 100 * (place - from) / length)) * 10) / 10;
    return [cent(event.clientX, box.left, box.width), cent(event.clientY, box.top, box.height)];
  }

  function put(picture, index, x, y) {
    const marks = field(picture, 'marks');
    let count = -1;
    marks.value = marks.value.split('\n').map(line => mark.test(line) && ++count === index ? line.replace(mark, `${x} ${y} $3`) : line).join('\n');
  }

  function drag(event, picture, index, balloon) {
    event.preventDefault();
    event.stopPropagation();
    const [circle, text] = balloon.children;
    const move = moved => {
      const [x, y] = at(moved, picture);
      circle.setAttribute('cx', `${x}%`); circle.setAttribute('cy', `${y}%`); text.setAttribute('x', `${x}%`); text.setAttribute('y', `${y}%`);
      put(picture, index, x, y);
    };
    const end = () => { removeEventListener('pointermove', move); removeEventListener('pointerup', end); save(); };
    addEventListener('pointermove', move);
    addEventListener('pointerup', end);
  }

  function place(event, picture) {
    const [x, y] = at(event, picture), marks = field(picture, 'marks');
    marks.closest('details').open = true;
    const before = marks.value.trimEnd();
    marks.value = `${before}${before ? '\n' : ''}${x} ${y} What it is`;
    draw(picture);
    marks.focus();
    marks.setSelectionRange(marks.value.length - 'What it is'.length, marks.value.length);
  }

  // Order

  function number() {
    const all = pictures();
    form.elements.order.value = all.map(picture => picture.dataset.id).join(',');
    all.forEach((picture, i) => {
      picture.querySelector('.number').firstChild.textContent = `${i + 1} `;
      picture.querySelector('[name=up]').disabled = i === 0;
      picture.querySelector('[name=down]').disabled = i === all.length - 1;
    });
  }

  function shift(picture, step) {
    const other = step < 0 ? picture.previousElementSibling : picture.nextElementSibling;
    if (!other) { return; }
    if (step < 0) { other.before(picture); } else { other.after(picture); }
    number();
    save();
  }

  // With a mouse, a pen or a finger: the picture goes to where it is let go of.
  function carry(event, picture) {
    event.preventDefault();
    let under = null;
    const move = moved => {
      under?.classList.remove('under');
      const over = document.elementFromPoint(moved.clientX, moved.clientY)?.closest('.picture');
      under = over && over !== picture ? over : null;
      under?.classList.add('under');
      if (moved.clientY < 60 || moved.clientY > innerHeight - 60) { scrollBy(0, moved.clientY < 60 ? -40 : 40); }
    };
    const end = ended => {
      removeEventListener('pointermove', move);
      removeEventListener('pointerup', end);
      removeEventListener('pointercancel', end);
      under?.classList.remove('under');
      if (!under || ended.type === 'pointercancel') { return; }
      if (under.compareDocumentPosition(picture) & Node.DOCUMENT_POSITION_FOLLOWING) { under.before(picture); } else { under.after(picture); }
      number();
      save();
    };
    addEventListener('pointermove', move);
    addEventListener('pointerup', end);
    addEventListener('pointercancel', end);
  }

  function teach(picture) {
    picture.querySelector('.number').addEventListener('pointerdown', event => carry(event, picture));
    picture.querySelector('.plate').addEventListener('click', event => { if (!event.target.closest('g')) { place(event, picture); } });
    field(picture, 'marks').addEventListener('input', () => draw(picture));
    for (const one of [field(picture, 'caption'), field(picture, 'alt'), field(picture, 'marks'), field(picture, 'never')]) { one.addEventListener('change', save); }
    for (const [name, step] of [['up', -1], ['down', 1]]) {
      picture.querySelector(`[name=${name}]`).addEventListener('click', event => { event.preventDefault(); shift(picture, step); event.target.closest('button').focus(); });
    }
    draw(picture);
  }

  form.addEventListener('keydown', event => {
    if (event.key !== 'Enter' || event.target.dataset.word === undefined) { return; }
    event.preventDefault();
    const words = [...form.querySelectorAll('[data-word]')];
    const next = words[words.indexOf(event.target) + 1];
    if (next) { next.focus(); next.select(); next.closest('.picture').scrollIntoView({ block: 'nearest' }); } else { event.target.blur(); form.querySelector('button.main').focus(); }
  });
  form.addEventListener('submit', event => {
    if (event.submitter?.name === 'move') { isChanged = false; return; }
    event.preventDefault();
    save();
  });
  addEventListener('beforeunload', event => { if (isChanged) { event.preventDefault(); } });
  pictures().forEach(teach);
})();
