/* What the page of tonight does beyond its forms: it keeps what is entered until it has arrived, sends it in order, counts the
   time on, and shows what came of it without loading the page anew. Without this script every form works by itself. */
(function () {
  'use strict';

  var page = document.getElementById('bench');
  var queue = document.getElementById('queue');
  var told = document.getElementById('told');
  var sending = false;
  var pause = 1000;
  var later = null;
  document.documentElement.classList.add('with-script');

  /* What waits lies in IndexedDB, so it outlives the page, the browser and the phone's battery. Where a browser keeps nothing, it
     lies in memory, and the page says so. */
  var shelf = (function () {
    var opened = null, kept = [], next = 1;
    function open() {
      opened = opened || new Promise(function (done, failed) {
        var asked = indexedDB.open('bench', 1);
        asked.onupgradeneeded = function () { asked.result.createObjectStore('waiting', { keyPath: 'key', autoIncrement: true }); };
        asked.onsuccess = function () { done(asked.result); };
        asked.onerror = function () { failed(asked.error); };
      });
      return opened;
    }
    function use(mode, work) {
      return open().then(function (base) {
        return new Promise(function (done, failed) {
          var change = base.transaction('waiting', mode, { durability: 'strict' });
          var asked = work(change.objectStore('waiting'));
          change.oncomplete = function () { done(asked.result); };
          change.onerror = change.onabort = function () { failed(change.error); };
        });
      });
    }
    var memory = {
      add: function (item) { item.key = next++; kept.push(item); return Promise.resolve(); },
      all: function () { return Promise.resolve(kept.slice()); },
      put: function (item) { kept = kept.map(function (one) { return one.key === item.key ? item : one; }); return Promise.resolve(); },
      remove: function (key) { kept = kept.filter(function (one) { return one.key !== key; }); return Promise.resolve(); }
    };
    var disk = {
      add: function (item) { return use('readwrite', function (store) { return store.add(item); }); },
      all: function () { return use('readonly', function (store) { return store.getAll(); }); },
      put: function (item) { return use('readwrite', function (store) { return store.put(item); }); },
      remove: function (key) { return use('readwrite', function (store) { return store.delete(key); }); }
    };
    var chosen = Promise.resolve().then(open).then(function () { return disk; }, function () { memory.isShort = true; return memory; });
    function by(name) { return function (value) { return chosen.then(function (one) { return one[name](value); }); }; }
    return { add: by('add'), all: by('all'), put: by('put'), remove: by('remove'), isShort: function () { return chosen.then(function (one) { return !!one.isShort; }); } };
  }());

  /* Not crypto.randomUUID, which plain http in the house does not have. */
  function newId() {
    return Array.prototype.map.call(crypto.getRandomValues(new Uint8Array(16)), function (byte) { return ('0' + byte.toString(16)).slice(-2); }).join('');
  }

  function clockOf(instant) {
    var day = new Date(instant);
    return ('0' + day.getHours()).slice(-2) + ':' + ('0' + day.getMinutes()).slice(-2);
  }

  function element(name, className, text) {
    var made = document.createElement(name);
    if (className) { made.className = className; }
    if (text) { made.textContent = text; }
    return made;
  }

  /* What is said of an item while it waits. */
  function wordsOf(form, button, fields) {
    function value(name) {
      var found = fields.filter(function (field) { return field[0] === name && typeof field[1] === 'string' && field[1].trim(); });
      return found.length ? found[0][1].trim() : '';
    }
    var words = value('text') || value('what') || value('caption') || value('actual') || value('rpm');
    var title = button ? button.textContent.replace(/\s+/g, ' ').trim() : '';
    return words ? (/^Keep|^Change$/.test(title) ? '' : title + ': ') + words : title || 'Picture';
  }

  function fieldsOf(form, button) {
    var fields = [];
    new FormData(form).forEach(function (value, name) {
      if (name !== 'token' && name !== 'id' && (typeof value === 'string' || value.size > 0)) { fields.push([name, value]); }
    });
    if (button && button.name) { fields.push([button.name, button.value]); }
    return fields;
  }

  function take(form, button, fields) {
    var item = { id: newId(), at: Date.now(), address: form.getAttribute('action'), fields: fields, words: wordsOf(form, button, fields) };
    return shelf.add(item).then(show).then(function () { return send(form); });
  }

  /* One after the other, the oldest first; what cannot arrive now waits, and all that came after it. */
  function send(form) {
    if (sending) { if (form) { clear(form); } return Promise.resolve(); }
    sending = true;
    clearTimeout(later);
    return shelf.all().then(function (items) {
      var waiting = items.filter(function (item) { return !item.refused; });
      return waiting.reduce(function (before, item, i) {
        return before.then(function (goesOn) { return goesOn ? sendOne(item, i === waiting.length - 1 ? form : null) : false; });
      }, Promise.resolve(true)).then(function (arrived) {
        sending = false;
        if (!arrived) {
          if (form) { clear(form); }
          later = setTimeout(send, pause);
          pause = Math.min(pause * 2, 20000);
          return show();
        }
        pause = 1000;
        return (waiting.length ? renew() : Promise.resolve()).then(show).then(function () {
          return shelf.all().then(function (left) { return left.some(function (item) { return !item.refused; }) ? send() : null; });
        });
      });
    }).catch(function () { sending = false; later = setTimeout(send, pause); });
  }

  function sendOne(item, form) {
    var body = new FormData();
    body.append('token', token());
    body.append('id', item.id);
    body.append('at', String(item.at));
    body.append('now', String(Date.now()));
    item.fields.forEach(function (field) { body.append(field[0], field[1]); });
    var hasFile = item.fields.some(function (field) { return typeof field[1] !== 'string'; });
    var stop = new AbortController();
    var clock = setTimeout(function () { stop.abort(); }, hasFile ? 120000 : 15000);
    return fetch(item.address, { method: 'POST', body: body, headers: { Accept: 'application/json' }, redirect: 'manual', signal: stop.signal }).then(function (answer) {
      if (answer.status === 401 || answer.status === 403) {
        say('This phone has to be paired again; what you entered is kept here until then.', false);
        queue.dataset.pair = 'yes';
        return false;
      }
      if (answer.status !== 200 && answer.status !== 422 && answer.status !== 413) { return false; }
      return (answer.status === 413 ? Promise.resolve({ done: false, said: 'That is larger than is taken at once.' }) : answer.json()).then(function (came) {
        say(came.said, came.done, came.verdict);
        if (!came.done && !form) {
          item.refused = came.said;
          return shelf.put(item).then(function () { return true; });
        }
        if (came.done && form) { clear(form); }
        return shelf.remove(item.key).then(function () { return true; });
      });
    }).catch(function () { return false; }).then(function (arrived) {
      clearTimeout(clock);
      return arrived;
    });
  }

  function token() {
    var field = document.querySelector('input[name=token]');
    return field ? field.value : '';
  }

  function clear(form) {
    if (form.isConnected && 'clears' in form.dataset) {
      form.reset();
      var around = form.closest('details.more');
      if (around) { around.open = false; }
    }
  }

  function say(words, isDone, verdict) {
    told.replaceChildren();
    if (verdict) {
      var shown = element('p', 'verdict ' + verdict.class);
      shown.append(element('strong', '', verdict.word), ' ', element('span', '', verdict.detail));
      told.append(shown);
    }
    told.append(element('p', isDone ? 'told' : 'told not', words));
    if (verdict || !isDone) { told.scrollIntoView({ block: 'nearest' }); }
  }

  /* How many wait, and what; and what was not taken, which only its maker may throw away. */
  function show() {
    return Promise.all([shelf.all(), shelf.isShort()]).then(function (both) {
      var items = both[0], waiting = items.filter(function (item) { return !item.refused; }), refused = items.filter(function (item) { return item.refused; });
      queue.replaceChildren();
      queue.hidden = !items.length;
      queue.dataset.waiting = String(waiting.length);
      if (waiting.length) {
        queue.append(element('strong', '', waiting.length === 1 ? '1 waits to be sent' : waiting.length + ' wait to be sent'));
        if (both[1]) { queue.append(element('p', '', 'This browser keeps nothing when it is closed: leave the page open.')); }
        if (queue.dataset.pair) {
          var way = element('a', '', 'Pair this phone again');
          way.href = '/pair';
          queue.append(element('br'), way);
        }
        var list = element('ul');
        waiting.slice(0, 20).forEach(function (item) { list.append(element('li', '', clockOf(item.at) + ' ' + item.words)); });
        queue.append(list);
      }
      refused.forEach(function (item) {
        var line = element('div', 'refused'), keep = element('button', '', 'Keep it as a remark'), drop = element('button', 'quiet', 'Throw it away');
        line.append(element('p', '', 'Not taken, ' + clockOf(item.at) + ' ' + item.words + '. ' + item.refused), keep, drop);
        keep.addEventListener('click', function () {
          item.address = '/tonight/remark';
          item.fields = [['text', item.words]];
          delete item.refused;
          shelf.put(item).then(function () { return send(); });
        });
        drop.addEventListener('click', function () { shelf.remove(item.key).then(show); });
        queue.append(line);
      });
    });
  }

  /* The parts of the page that tell how things stand, as they are now. What is being typed stays. */
  function renew() {
    return fetch('/tonight', { headers: { Accept: 'text/html' } }).then(function (answer) {
      if (!answer.ok || answer.redirected) { throw new Error(); }
      return answer.text();
    }).then(function (text) {
      var fresh = new DOMParser().parseFromString(text, 'text/html'), before = told;
      var focused = document.activeElement && document.activeElement.closest('[data-live]');
      var way = focused && document.activeElement.form ? document.activeElement.form.getAttribute('action') : '';
      fresh.querySelectorAll('[data-live]').forEach(function (part) {
        var old = document.getElementById(part.id), made = document.importNode(part, true);
        if (part.id === 'told') { return; }
        if (old && isBeingTyped(old)) { before = old; return; }
        if (old) { keepOpen(old, made); old.replaceWith(made); } else { before.after(made); }
        before = made;
      });
      document.querySelectorAll('[data-live]').forEach(function (part) { if (!fresh.getElementById(part.id)) { part.remove(); } });
      if (focused && !document.contains(document.activeElement === document.body ? null : document.activeElement)) {
        var section = document.getElementById(focused.id) || page;
        var again = section.querySelector('form[action="' + way + '"] button') || section.querySelector('button');
        if (again) { again.focus({ preventScroll: true }); }
      }
      tick();
    }).catch(function () { /* It stands as it was; the next time it is renewed. */ });
  }

  function keepOpen(old, made) {
    old.querySelectorAll('details[id]').forEach(function (one) {
      var again = made.querySelector('#' + one.id);
      if (again) { again.open = one.open; }
    });
  }

  function isBeingTyped(part) {
    return Array.prototype.some.call(part.querySelectorAll('textarea, input:not([type=hidden]):not([type=radio])'), function (field) { return field.value !== field.defaultValue; });
  }

  var shownAt = Date.now();
  function tick() {
    var time = document.querySelector('.time[data-runs]');
    if (!time) { return; }
    if (!time.dataset.from) { time.dataset.from = String(Date.now() - 1000 * Number(time.dataset.seconds)); }
    var minutes = Math.floor((Date.now() - Number(time.dataset.from)) / 60000), hours = Math.floor(minutes / 60);
    var rest = ('0' + minutes % 60).slice(-2);
    time.textContent = hours ? hours + '\u202fh' + (minutes % 60 ? '\u202f' + rest : '') : minutes + '\u202fmin';
  }

  document.addEventListener('submit', function (event) {
    var form = event.target, button = event.submitter;
    if (form.getAttribute('method') !== 'post' || form.getAttribute('action').indexOf('/tonight/') !== 0) { return; }
    event.preventDefault();
    var fields = fieldsOf(form, button);
    if (form.enctype === 'multipart/form-data' && !fields.some(function (field) { return typeof field[1] !== 'string'; })) { return; }
    take(form, button, fields);
  });

  /* Each picture is an item of its own: one that is refused holds up no other. */
  document.addEventListener('change', function (event) {
    var field = event.target;
    if ('sends' in field.dataset) {
      var form = field.form, caption = form.elements.caption.value, files = Array.prototype.slice.call(field.files);
      field.value = '';
      files.reduce(function (before, file) {
        return before.then(function () {
          return take(form, null, [['picture', file]].concat(caption.trim() ? [['caption', caption]] : []));
        });
      }, Promise.resolve());
    } else if (field.dataset.leadsTo && Date.now() - pressedAt < 1000) {
      document.getElementById(field.dataset.leadsTo).focus();
    }
  });

  /* Whoever goes through the choices with the arrow keys stays among them. */
  var pressedAt = 0;
  document.addEventListener('pointerup', function () { pressedAt = Date.now(); });

  document.addEventListener('keydown', function (event) {
    if (event.key === 'Enter' && !event.shiftKey && !event.isComposing && event.target.id === 'text' && event.target.value.trim()) {
      event.preventDefault();
      event.target.form.requestSubmit();
    }
  });

  window.addEventListener('online', function () { pause = 1000; send(); });
  document.addEventListener('visibilitychange', function () {
    if (!document.hidden) {
      pause = 1000;
      if (Date.now() - shownAt > 60000) { shownAt = Date.now(); renew(); }
      send();
    }
  });
  setInterval(tick, 10000);
  tick();
  show().then(function () { return send(); });
  if ('serviceWorker' in navigator) { navigator.serviceWorker.register('/worker.js').catch(function () { /* Then the page needs the network to open. */ }); }
}());
