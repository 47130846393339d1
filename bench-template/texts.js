// A file as text: the editor around the textarea, its problems beside their lines, and its page beside it while it is typed.
'use strict';
(() => {
  const textarea = document.getElementById('text');
  const form = document.getElementById('text-form');
  const list = document.getElementById('problems');
  const frame = document.getElementById('preview');
  const note = document.getElementById('preview-note');
  const pause = 60; // Milliseconds without a key before a look is asked for.
  let isChanged = textarea.dataset.changed !== undefined, editor = null, timer = 0, asked = 0;
  document.documentElement.classList.add('with-script');

  function element(name, text, look) {
    const made = document.createElement(name);
    made.textContent = text;
    if (look) { made.className = look; }
    return made;
  }

  function row(problem) {
    const made = document.createElement('li');
    made.className = problem.severity;
    const line = element('button', `Line ${problem.line}`, 'at-line');
    line.type = 'button';
    line.addEventListener('click', () => editor?.goTo(problem.line, problem.column));
    made.append(line, ` ${problem.message} `, element('span', problem.remedy, 'small'));
    if (problem.mend && editor) {
      const mend = element('button', `Write ${problem.mend.word}`, 'mend');
      mend.type = 'button';
      mend.addEventListener('click', () => editor.mend(problem.mend));
      made.append(' ', mend);
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
    shown.title = fresh.title;
    shown.body.className = fresh.body.className;
    shown.body.replaceChildren(...fresh.body.childNodes);
    shown.querySelectorAll('details').forEach((one, i) => { if (i < open.length) { one.open = open[i]; } });
    frame.contentWindow.scrollTo(scrollX, scrollY);
  }

  function tell(words) {
    if (note) { note.hidden = words === ''; note.textContent = words; }
  }

  async function look() {
    const mine = ++asked;
    const body = new FormData();
    body.append('token', form.elements.token.value);
    body.append('text', textarea.value);
    try {
      const answer = await fetch(textarea.dataset.typed, { method: 'POST', body, headers: { Accept: 'application/json' } });
      if (mine !== asked || !answer.ok) { return; }
      const { problems, elsewhere, page } = await answer.json();
      if (mine !== asked) { return; }
      list.replaceChildren(...problems.map(row));
      document.getElementById('no-problems').hidden = problems.length > 0;
      editor?.show(problems);
      if (page) { renew(page); }
      tell(page ? '' : elsewhere > 0 ? 'Errors in other files keep the page from being made. See Files.' : 'The page stays as it was until the errors are put right.');
      document.documentElement.dataset.looked = String(mine);
    } catch {
      tell('The bench does not answer. What you typed is still here.');
    }
  }

  function changed() {
    isChanged = true;
    clearTimeout(timer);
    timer = setTimeout(look, pause);
  }

  async function begin() {
    const words = await fetch(textarea.dataset.words).then(answer => answer.json()).catch(() => ({ keys: {}, values: {}, links: {} }));
    editor = window.BenchEditor?.open(textarea, { isEntry: textarea.dataset.entry !== undefined, words, label: `Text of ${textarea.dataset.name}`, changed, save: () => form.requestSubmit() }) ?? null;
    if (!editor) { textarea.addEventListener('input', changed); }
    look();
  }

  form.addEventListener('submit', () => { isChanged = false; });
  addEventListener('beforeunload', event => { if (isChanged) { event.preventDefault(); } });
  if (frame) { frame.addEventListener('load', () => { if (isChanged) { look(); } }); }
  begin();
})();
