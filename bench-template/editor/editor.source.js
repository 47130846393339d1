// The text editor of the bench: CodeMirror 6 around a textarea that works without it. It stands in a shadow root, for there its style
// sheets are objects and no elements, which the content policy would refuse.
import { EditorState } from '@codemirror/state';
import { EditorView, keymap, lineNumbers, highlightActiveLine, drawSelection } from '@codemirror/view';
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { autocompletion, completionKeymap, closeBrackets } from '@codemirror/autocomplete';
import { setDiagnostics, lintGutter, lintKeymap } from '@codemirror/lint';
import { Language, LanguageSupport, defineLanguageFacet, syntaxHighlighting, HighlightStyle } from '@codemirror/language';
import { yaml, yamlFrontmatter } from '@codemirror/lang-yaml';
import { parser } from '@lezer/markdown';
import { tags } from '@lezer/highlight';

const markdown = new LanguageSupport(new Language(defineLanguageFacet(), parser, [], 'markdown'));

const colours = HighlightStyle.define([
  { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: 'var(--blue)', fontWeight: '600' },
  { tag: [tags.heading, tags.strong], fontWeight: '700' },
  { tag: tags.emphasis, fontStyle: 'italic' },
  { tag: [tags.link, tags.url], color: 'var(--blue)', textDecoration: 'underline' },
  { tag: [tags.comment, tags.meta, tags.separator], color: 'var(--pencil)' },
]);

const look = EditorView.theme({
  '&': { color: 'var(--ink)', backgroundColor: 'var(--paper)', border: '2px solid var(--line)', borderRadius: '6px', fontSize: '1rem' },
  '&.cm-focused': { outline: '4px solid var(--blue)', outlineOffset: '2px' },
  '.cm-scroller': { fontFamily: 'ui-monospace, "DejaVu Sans Mono", monospace', lineHeight: '1.5', minHeight: '24rem', maxHeight: '75vh', overflow: 'auto' },
  '.cm-content': { caretColor: 'var(--ink)' },
  '.cm-cursor': { borderLeftColor: 'var(--ink)', borderLeftWidth: '2px' },
  '.cm-gutters': { color: 'var(--pencil)', backgroundColor: 'var(--ground)', border: '0' },
  '.cm-activeLine, .cm-activeLineGutter': { backgroundColor: 'var(--blue-wash)' },
  '&.cm-focused .cm-selectionBackground, .cm-selectionBackground': { backgroundColor: 'var(--rule) !important' },
  '.cm-tooltip': { color: 'var(--ink)', backgroundColor: 'var(--paper)', border: '1px solid var(--line)' },
  '.cm-tooltip-autocomplete > ul > li[aria-selected]': { color: 'var(--on-blue)', backgroundColor: 'var(--blue)' },
  '.cm-diagnostic-error': { borderLeftColor: 'var(--out)' },
  '.cm-diagnosticAction': { color: 'var(--on-blue)', backgroundColor: 'var(--blue)', font: 'inherit', padding: '.2rem .6rem' },
  '.cm-completionDetail': { color: 'inherit', fontStyle: 'normal', opacity: '.8' },
});

// Where a line stands among the keys: the key on its left, and the keys that it is inside of.
function placeOf(state, position) {
  const line = state.doc.lineAt(position);
  const before = line.text.slice(0, position - line.from);
  const typed = /[^\s,:[\]{}("']*$/.exec(before)[0];
  const lead = before.slice(0, before.length - typed.length);
  const inLine = /(?:^|[\s{,])([\w-]+):\s*(?:\[[^\]]*)?$/.exec(lead);
  const indent = /^\s*(?:-\s+)?/.exec(line.text)[0].length;
  let outer = '';
  for (let number = line.number - 1, above = indent; number > 0 && above > 0; number--) {
    const text = state.doc.line(number).text;
    const key = /^(\s*(?:-\s+)?)([\w-]+):/.exec(text);
    const starts = /^\s*/.exec(text)[0].length;
    if (key && key[1].length < above && !(text.trimStart().startsWith('-') && key[1].length >= above)) { outer = key[2]; break; }
    if (text.trim() !== '' && starts === 0) { break; }
  }
  if (/^\s*-/.test(line.text) && outer === '') {
    for (let number = line.number - 1; number > 0; number--) {
      const key = /^([\w-]+):\s*$/.exec(state.doc.line(number).text);
      if (key) { outer = key[1]; break; }
    }
  }
  const braces = /(?:^|\s|-\s*)(?:([\w-]+):\s*)?\{[^}]*$/.exec(lead);
  return { typed, from: position - typed.length, key: inLine ? inLine[1] : null, inside: braces?.[1] ?? outer, line };
}

const options = list => (list ?? []).map(([label, detail]) => ({ label, detail }));

function complete(words, isEntry) {
  return context => {
    const { state, pos } = context;
    const link = context.matchBefore(/\((part|tool|lesson|entry):[^)\s]*/);
    if (link) {
      const kind = /\((\w+):/.exec(link.text)[1];
      return { from: link.from + kind.length + 2, options: options(words.links[kind]), validFor: /^[\w/-]*$/ };
    }
    const isBody = isEntry && !/^---\r?\n(?:(?!---\s*\n)[^\n]*\n)*(?!---\s*\n)[^\n]*$/.test(state.sliceDoc(0, pos));
    if (isBody) { return null; }
    const { typed, from, key, inside, line } = placeOf(state, pos);
    if (typed === '' && !context.explicit && !key) { return null; }
    if (key) {
      const known = words.values[`${inside}.${key}`] ?? words.values[key];
      return known ? { from, options: options(known), validFor: /^[\w/-]*$/ } : null;
    }
    const isItem = /^\s*-\s+[\w-]*$/.test(line.text.slice(0, pos - line.from));
    const keys = options(words.keys[inside] ?? []).map(one => ({ ...one, apply: `${one.label}: ` }));
    const known = isItem ? options(words.values[inside]) : [];
    return keys.length + known.length ? { from, options: [...known, ...keys], validFor: /^[\w-]*$/ } : null;
  };
}

// A text in an editor. `changed` hears of every change, `save` of Ctrl-S.
function open(textarea, { isEntry, words, label, changed, save }) {
  const host = document.createElement('div');
  host.className = 'editor';
  const root = host.attachShadow({ mode: 'open' });
  const place = document.createElement('div');
  root.append(place);
  textarea.before(host);
  textarea.hidden = true;
  const view = new EditorView({
    parent: place,
    root,
    state: EditorState.create({
      doc: textarea.value,
      extensions: [
        lineNumbers(), lintGutter(), history(), drawSelection(), highlightActiveLine(), closeBrackets(), EditorView.lineWrapping, look, syntaxHighlighting(colours),
        isEntry ? yamlFrontmatter({ content: markdown }) : yaml(),
        autocompletion({ override: [complete(words, isEntry)] }),
        keymap.of([{ key: 'Mod-s', preventDefault: true, run: () => { save(); return true; } }, ...completionKeymap, ...lintKeymap, ...historyKeymap, ...defaultKeymap]),
        EditorView.contentAttributes.of({ 'aria-label': label, spellcheck: 'true', tabindex: '0' }),
        EditorView.updateListener.of(update => { if (update.docChanged) { textarea.value = view.state.doc.toString(); changed(); } }),
      ],
    }),
  });
  const at = (line, column) => { const found = view.state.doc.line(Math.min(Math.max(line, 1), view.state.doc.lines)); return Math.min(found.from + Math.max(column - 1, 0), found.to); };
  const mend = one => view.dispatch({ changes: { from: at(one.line, one.column), to: at(one.line, one.column + one.length), insert: one.word } });
  return {
    replace(text) { view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: text } }); },
    goTo(line, column) { const place = at(line, column); view.dispatch({ selection: { anchor: place }, effects: EditorView.scrollIntoView(place, { y: 'center' }) }); view.focus(); },
    mend,
    show(problems) {
      view.dispatch(setDiagnostics(view.state, problems.map(problem => ({
        from: at(problem.line, problem.column),
        to: problem.mend ? at(problem.mend.line, problem.mend.column + problem.mend.length) : view.state.doc.lineAt(at(problem.line, problem.column)).to,
        severity: problem.severity,
        message: `${problem.message} ${problem.remedy}`,
        actions: problem.mend ? [{ name: `Write ${problem.mend.word}`, apply: () => mend(problem.mend) }] : [],
      }))));
    },
  };
}

window.BenchEditor = { open };
