// A file as text: the editor around the textarea, its problems beside their lines, and its page beside it while it is typed. On the
// page of a write-up the form beside it makes the text, until the maker changes the text itself.
'use strict';
(() => {
  const textarea = document.getElementById('text');
  const form = document.getElementById('text-form');
  const list = document.getElementById('problems');
  const frame = document.getElementById('preview');
  const note = document.getElementById('preview-note');
  const draftNote = document.getElementById('draft-note');
  const pause = 60; // Milliseconds without a key before a look is asked for.
  let isChanged = textarea.dataset.changed !== undefined, isTyped = isChanged, isDrafting = false;
  let editor = null, timer = 0, asked = 0, drafted = 0, draftTimer = 0;
  document.documentElement.classList.add('with-script');

  function element(name, text, look) {
    const made = document.createElement(name);
    made.textContent = text;
    if (look) { made.className = look; }
    return made;
  }

  function button(text, look, pressed) {
    const made = element('button', text, look);
    made.type = 'button';
    made.addEventListener('click', pressed);
    return made;
  }

  function row(problem) {
    const made = document.createElement('li');
    made.className = problem.severity;
    made.append(button(`Line ${problem.line}`, 'at-line', () => editor?.goTo(problem.line, problem.column)), ` ${problem.message} `, element('span', problem.remedy, 'small'));
    if (problem.mend && editor) {
      made.append(' ', button(`Write ${problem.mend.word}`, 'mend', () => editor.mend(problem.mend)));
    }
    return made;
  }

  // The new page takes the old one's place within the frame, so that the reader stays where they were.
  function renew(html) {
    const shown = frame?.contentDocument;
    if (!shown?.body) { return; }
    const fresh = new DOMParser().parseFromString(html, 'text/html');
    const { scrollX, scrollY } = frame.contentWindow;
    const open = [...shown.querySelectorAll('details')].map(one => one.open);
    if (!shown.querySelector('link[rel=stylesheet]')) { shown.head.append(...fresh.querySelectorAll('head > link[rel=stylesheet]')); }
    shown.title = fresh.title;
    shown.body.className = fresh.body.className;
    shown.body.replaceChildren(...fresh.body.childNodes);
    shown.querySelectorAll('details').forEach((one, i) => { if (i < open.length) { one.open = open[i]; } });
    frame.contentWindow.scrollTo(scrollX, scrollY);
  }

  function tell(words) {
    if (note) { note.hidden = words === ''; note.textContent = words; }
  }

  const send = address => fetch(address, { method: 'POST', body: new FormData(form), headers: { Accept: 'application/json' } });

  async function look() {
    const mine = ++asked;
    try {
      const answer = await send(textarea.dataset.typed);
      if (mine !== asked || !answer.ok) { return; }
      const { problems, elsewhere, page, address } = await answer.json();
      if (mine !== asked) { return; }
      list.replaceChildren(...problems.map(row));
      document.getElementById('no-problems').hidden = problems.length > 0;
      editor?.show(problems);
      if (page) { show(page, address); }
      tell(page ? '' : elsewhere > 0 ? 'Errors in other files keep the page from being made. See Files.' : 'The page stays as it was until the errors are put right.');
      document.documentElement.dataset.looked = String(mine);
    } catch {
      tell('The bench does not answer. What you typed is still here.');
    }
  }

  // A page's pictures and style stand relative to its own address: where the frame shows another, it goes there first.
  function show(page, address) {
    if (!frame || frame.contentWindow.location.pathname === address) { renew(page); return; }
    frame.addEventListener('load', () => renew(page), { once: true });
    frame.contentWindow.location.replace(address);
  }

  function changed() {
    isChanged = true;
    isTyped = isTyped || !isDrafting;
    clearTimeout(timer);
    timer = setTimeout(look, pause);
  }

  // The text made anew of the form.
  async function draft(isAgreed) {
    const mine = ++drafted;
    isChanged = true;
    if (isTyped && !isAgreed) {
      draftNote.hidden = false;
      draftNote.replaceChildren('You changed the text itself, so it stays. ', button('Make it anew; what I changed in it goes', 'mend', () => draft(true)));
      return;
    }
    const answer = await send(textarea.dataset.draft).catch(() => null);
    if (mine !== drafted) { return; }
    const { text, file, said } = answer?.ok ? await answer.json() : { said: 'The bench does not answer.' };
    draftNote.hidden = !said;
    draftNote.textContent = said ?? '';
    if (text === undefined || text === null) { return; }
    document.getElementById('file').textContent = file;
    isTyped = false;
    isDrafting = true;
    if (editor) { editor.replace(text); } else { textarea.value = text; changed(); }
    isDrafting = false;
  }

  function follow() {
    const fields = [...form.elements].filter(field => field.name && field !== textarea && field.type !== 'hidden');
    for (const field of fields) {
      field.addEventListener('input', () => { clearTimeout(draftTimer); draftTimer = setTimeout(draft, pause); });
      field.addEventListener('keydown', event => { if (event.key === 'Enter' && field.tagName === 'INPUT') { event.preventDefault(); } });
    }
    // What was filled in before this script ran counts too.
    if (fields.some(field => field.type === 'checkbox' ? field.checked !== field.defaultChecked : 'defaultValue' in field && field.value !== field.defaultValue)) { draft(); }
  }

  async function begin() {
    if (textarea.dataset.draft) { follow(); }
    const words = await fetch(textarea.dataset.words).then(answer => answer.json()).catch(() => ({ keys: {}, values: {}, links: {} }));
    editor = window.BenchEditor?.open(textarea, { isEntry: textarea.dataset.entry !== undefined, words, label: `Text of ${textarea.dataset.name}`, changed, save: () => form.requestSubmit() }) ?? null;
    if (!editor) { textarea.addEventListener('input', changed); }
    look();
  }

  form.addEventListener('submit', () => { isChanged = false; });
  addEventListener('beforeunload', event => { if (isChanged) { event.preventDefault(); } });
  begin();
})();
