'use strict';

// Finds words in the index that `journal publish` writes. No page is touched here; find.js shows what is found.
// Loaded, with the index, when someone begins to type: classic scripts, so that it works from the file system too.
const journalFind = (() => {
  const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
  const FEW = 5; // With fewer found than this, words that differ by a slip are looked at too.
  const WORD = /\p{N}+(?:[./]\p{N}+)+|[\p{L}\p{N}]+/gu;

  let index = null;
  let accents = new Map();
  const pieces = [];
  const waiting = [];

  // The same folding and splitting as SearchTokens.cs.
  const fold = text => text.replace(/\p{Mn}/gu, '').toLowerCase().replace(/[^\x00-\x7f]/g, letter => accents.get(letter) ?? letter);
  const split = text => fold(text).match(WORD) ?? [];

  function open(data) {
    let before = '';
    accents = new Map([...data.accented].map((letter, at) => [letter, data.plain[at]]));
    const inTexts = data.words === '' ? [] : data.words.split(' ').map(coded => before = before.slice(0, parseInt(coded[0], 36)) + coded.slice(1));
    const holders = new Map();
    holdersOf(data.postings, inTexts.length, data.titles.length).forEach((things, at) => holders.set(inTexts[at], new Map(things.map(thing => [thing, 1]))));
    data.titles.forEach((title, thing) => {
      // A word of a short title tells more of it than a word of a long one.
      const inTitle = split(title), weight = 7 / Math.sqrt(inTitle.length);
      inTitle.forEach(word => add(holders, word, thing, weight));
      split(data.abouts[thing]).forEach(word => add(holders, word, thing, 1));
    });
    const words = [...holders.keys()].sort((a, b) => a < b ? -1 : 1);
    const starts = [0];
    data.pieces.forEach(([, count]) => starts.push(starts.at(-1) + count));
    index = { ...data, words, holders: words.map(word => holders.get(word)), common: new Set(data.common.split(' ')), starts };
    waiting.splice(0).forEach(ready => ready());
  }

  // The browser may still hold a piece of another publish; its stamp tells.
  function texts({ piece, stamp, texts }) {
    const at = index?.pieces.findIndex(([name, , now]) => name === piece && now === stamp) ?? -1;
    if (at >= 0) {
      pieces[at] = texts;
    }
  }

  function add(holders, word, thing, weight) {
    if (!holders.has(word)) { holders.set(word, new Map()); }
    holders.get(word).set(thing, Math.max(weight, holders.get(word).get(thing) ?? 0));
  }

  // The numbers of the things that hold each word; Postings.cs says how the bits are written.
  function holdersOf(letters, words, things) {
    const values = new Uint8Array(128);
    [...LETTERS].forEach((letter, value) => values[letter.charCodeAt(0)] = value);
    let at = 0;
    const bit = () => (values[letters.charCodeAt(Math.floor(at / 6))] >> (5 - at++ % 6)) & 1;
    const bits = length => { let value = 0; while (length-- > 0) { value = value << 1 | bit(); } return value; };
    return Array.from({ length: words }, () => {
      let zeros = 0, parameter = 0, thing = -1;
      while (bit() === 0) { zeros++; }
      const count = 1 << zeros | bits(zeros);
      while (3 * count * 2 ** (parameter + 1) <= 2 * things) { parameter++; }
      return Array.from({ length: count }, () => {
        let whole = 0;
        while (bit() === 1) { whole++; }
        return thing += (whole << parameter | bits(parameter)) + 1;
      });
    });
  }

  function firstNotBefore(text) {
    let low = 0, high = index.words.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (index.words[middle] < text) { low = middle + 1; } else { high = middle; }
    }
    return low;
  }

  function isWord(text) {
    return index.words[firstNotBefore(text)] === text || index.common.has(text);
  }

  // Words that begin with what was typed; the more of the word was typed, the more it counts.
  function beginning(text) {
    const found = [];
    for (let word = firstNotBefore(text); word < index.words.length && index.words[word].startsWith(text); word++) {
      const whole = index.words[word].length === text.length;
      if (whole || text.length > 1) {
        found.push({ word, weight: whole ? 1 : 0.75 * text.length / index.words[word].length });
      }
    }
    return found;
  }

  // Words that are a slip away: a letter wrong, missing, too many, or two exchanged (optimal string alignment
  // distance). What was typed may also be the beginning of a longer word. Only the nearest are taken.
  function near(text) {
    const most = text.length < 3 || /\p{N}/u.test(text) ? 0 : text.length < 8 ? 1 : 2;
    let best = most + 0.5, found = [];
    if (most === 0) { return found; }
    index.words.forEach((candidate, word) => {
      if (candidate.length < text.length - most || (text.length < 5 && (candidate[0] !== text[0] || candidate.length < text.length))) { return; }
      const cost = distance(text, candidate, most);
      if (cost > 0 && cost < best) { best = cost; found = []; }
      if (cost > 0 && cost === best) { found.push({ word, weight: cost <= 1.25 ? 0.4 : 0.25 }); }
    });
    return found;
  }

  function distance(typed, candidate, most) {
    let last = [], row = Array.from({ length: typed.length + 1 }, (_, i) => i);
    let best = Infinity;
    for (let i = 1; i <= candidate.length && i <= typed.length + most + 1; i++) {
      const next = [i];
      for (let j = 1; j <= typed.length; j++) {
        const same = candidate[i - 1] === typed[j - 1];
        next[j] = Math.min(next[j - 1] + 1, row[j] + 1, row[j - 1] + (same ? 0 : 1));
        if (i > 1 && j > 1 && candidate[i - 1] === typed[j - 2] && candidate[i - 2] === typed[j - 1]) {
          next[j] = Math.min(next[j], last[j - 2] + 1);
        }
      }
      [last, row] = [row, next];
      const whole = i === candidate.length;
      if (whole || typed.length > 3) { best = Math.min(best, next[typed.length] + (whole ? 0 : 0.25)); }
    }
    return best;
  }

  // `faceplate` is found where it is written as two words.
  function halves(text) {
    for (let at = 3; at <= text.length - 3; at++) {
      if (isWord(text.slice(0, at)) && isWord(text.slice(at))) { return [text.slice(0, at), text.slice(at)]; }
    }
    return null;
  }

  function termsOf(typed) {
    return typed.flatMap(text => {
      const found = beginning(text);
      const two = found.length === 0 ? halves(text) : null;
      if (two) { return two.map(half => ({ typed: half, found: beginning(half), slips: [] })); }
      const few = found.reduce((sum, { word }) => sum + index.holders[word].size, 0) < FEW;
      const slips = few && !index.common.has(text) ? near(text) : [];
      return [{ typed: text, found: [...found, ...slips], slips: found.length === 0 ? slips.sort((a, b) => index.holders[b.word].size - index.holders[a.word].size).map(({ word }) => index.words[word]) : [] }];
    });
  }

  // What a search finds, best first. `all` tells whether everything found holds every word that was typed.
  function search(query) {
    const terms = termsOf([...new Set(split(query))]);
    const needed = terms.filter(term => !index.common.has(term.typed)).length;
    const scores = new Map();
    for (const term of terms) {
      const holders = new Map();
      for (const { word, weight } of term.found) {
        const rarity = Math.log(1 + index.titles.length / index.holders[word].size);
        index.holders[word].forEach((standing, thing) => holders.set(thing, Math.max(holders.get(thing) ?? 0, weight * rarity * standing)));
      }
      const counts = index.common.has(term.typed) ? 0 : 1;
      holders.forEach((score, thing) => {
        const { score: sum = 0, held = 0 } = scores.get(thing) ?? {};
        scores.set(thing, { score: sum + score, held: held + counts });
      });
    }
    const mostHeld = Math.max(0, ...[...scores.values()].map(({ held }) => held));
    const things = [...scores].filter(([, { held }]) => held === mostHeld)
      .map(([thing, { score }]) => ({ thing, score }))
      .sort((a, b) => b.score - a.score || a.thing - b.thing);
    const marked = new Set(terms.flatMap(({ found }) => found.map(({ word }) => index.words[word])));
    return { things, all: mostHeld === needed, slips: terms.flatMap(({ slips }) => slips.slice(0, 2)), isMarked: word => marked.has(word) || index.common.has(word) && terms.some(({ typed }) => typed === word) };
  }

  // A text cut into what is marked and what is not: [{ text, isMarked }].
  function cut(text, isMarked) {
    const parts = [];
    let from = 0;
    for (const { 0: word, index: at } of text.matchAll(/[\p{L}\p{N}\p{M}]+(?:[./]\p{N}+)*/gu)) {
      if (split(word).some(isMarked)) {
        parts.push({ text: text.slice(from, at), isMarked: false }, { text: word, isMarked: true });
        from = at + word.length;
      }
    }
    parts.push({ text: text.slice(from), isMarked: false });
    return parts;
  }

  // The stretch of a text with the most different words found, or its beginning.
  function around(text, isMarked, length) {
    const hits = [...text.matchAll(/[\p{L}\p{N}\p{M}]+(?:[./]\p{N}+)*/gu)].filter(({ 0: word }) => split(word).some(isMarked));
    let best = 0, most = 0;
    hits.forEach(({ index: at }) => {
      const inside = new Set(hits.filter(hit => hit.index >= at && hit.index < at + length * 0.8).map(hit => fold(hit[0]))).size;
      if (inside > most) { [best, most] = [at, inside]; }
    });
    let from = Math.max(0, Math.min(best - length * 0.2, text.length - length));
    from = from === 0 ? 0 : text.indexOf(' ', from) + 1;
    const end = from + length >= text.length ? text.length : text.lastIndexOf(' ', from + length);
    return (from > 0 ? '… ' : '') + text.slice(from, end) + (end < text.length ? ' …' : '');
  }

  function pieceOf(thing) {
    return index.starts.findLastIndex(start => start <= thing);
  }

  return {
    open, texts, split, search, cut, around,
    textsOf: number => `text-${index.pieces[pieceOf(number)][0]}.js`,
    ready: call => index ? call() : waiting.push(call),
    thing: number => ({ kind: Number(index.kinds[number]), title: index.titles[number], address: index.addresses[number], about: index.abouts[number] }),
    text: number => pieces[pieceOf(number)]?.[number - index.starts[pieceOf(number)]],
  };
})();
