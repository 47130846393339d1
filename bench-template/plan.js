// A plan: the estimate follows the guesses as they are typed. Without this script a button makes it.
'use strict';
(() => {
  const form = document.getElementById('plan');
  const sentence = document.getElementById('sentence');
  const lines = document.getElementById('lines');
  let timer = 0, asked = 0, isChanged = false;
  document.documentElement.classList.add('with-script');

  async function estimate() {
    const mine = ++asked;
    try {
      const answer = await fetch(form.action, { method: 'POST', body: new URLSearchParams(new FormData(form)), headers: { Accept: 'application/json' } });
      if (mine !== asked || !answer.ok) { return; }
      const { sentence: words, lines: more, parts } = await answer.json();
      if (mine !== asked) { return; }
      form.classList.toggle('stale', words === null);
      if (words !== null) {
        sentence.textContent = words;
        for (const row of form.querySelectorAll('tr[data-part]')) {
          const hours = parts.find(one => one.part === row.dataset.part);
          row.querySelector('.even').textContent = hours?.even ?? '–';
          row.querySelector('.range').textContent = hours?.range ?? '–';
        }
      }
      lines.replaceChildren(...more.map(line => { const made = document.createElement('p'); made.textContent = line; return made; }));
      document.documentElement.dataset.estimated = String(mine);
    } catch {
      lines.textContent = 'The bench does not answer. What you typed is still here.';
    }
  }

  form.addEventListener('input', event => {
    isChanged = isChanged || event.target.type !== 'checkbox';
    clearTimeout(timer);
    timer = setTimeout(estimate, 60);
  });
  form.addEventListener('submit', () => { isChanged = false; });
  addEventListener('beforeunload', event => { if (isChanged) { event.preventDefault(); } });
})();
