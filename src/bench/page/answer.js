// The answer, always in sight: the band with verdict, lengths or the next thing to measure; then why, what would serve, papers.
import {box_of, hint_of} from './boxes.js';
import {enough, next} from './next.js';
import {button, changed, edited, id, make, on_change, state, t} from './state.js';

/** @typedef {import('./state.js').Change} Change */

/** Puts in what would serve: the server said where.
 * @param {Change[]} changes */
function put_in(changes) {
  for (const {path, value} of changes) {
    state.job.set(path, value);
    const at = path.split('@');
    if (value === null && at.length === 1) state.job.remove(path);
  }
  edited();
}

/** Brings the box to the eye and the hand.
 * @param {string} path */
export function go_to(path) {
  const one = /** @type {HTMLElement | null} */ (document.querySelector(`[data-path="${path}"]`)) || /** @type {HTMLElement | null} */ (document.querySelector('[data-joint].lit, [data-spot].lit'));
  if (!one) return;
  for (let up = one.parentElement; up; up = up.parentElement) if (up instanceof HTMLDetailsElement) up.open = true;
  one.scrollIntoView({block: 'center'});
  const target = one.matches('input, button') ? one : /** @type {HTMLElement | null} */ (one.querySelector('button, input'));
  if (target) target.focus({preventScroll: true});
}

export function go_to_next() {
  const step = next();
  if (step) go_to(step.path);
}

/** @param {{path: string, word: string, must: boolean}} step */
function next_lines(step) {
  const row = make('div', {class: 'row'}, button(t('go'), go_to_next, {id: 'go'}));
  if (!step.must) row.append(button(t('skip'), () => { state.skipped.add(step.path); changed(); }, {id: 'skip'}));
  const hint = hint_of(box_of(step.path)?.word || step.word);
  return [make('p', {class: 'small'}, t('next')), make('p', {class: 'big', id: 'next'}, t(step.word)), ...(hint ? [make('p', {class: 'small'}, hint)] : []), row];
}

const VERDICTS = ['cut', 'fits', 'refused'];

function verdict_lines(/** @type {import('./state.js').View} */ view) {
  const cuts = view.band.lengths.map((one) => make('div', {class: `cut${one.mm ? '' : ' none'}`, 'data-letter': one.letter, 'data-mm': String(one.mm ?? '')},
    make('span', {class: 'disc'}, one.letter), make('span', {class: 'length'}, one.mm ? one.says : t('not_cut')), make('span', {class: 'what'}, one.what), ...(one.keep_says ? [make('span', {class: 'keep'}, t('keep', one.keep_says))] : [])));
  const step = next();
  const rest = step ? [make('p', {class: 'small'}, t('still', t(step.word)), ' ', button(t('go'), go_to_next), ' ', button(t('skip'), () => { state.skipped.add(step.path); changed(); }))] : [];
  return [make('p', {class: 'verdict'}, view.band.says), ...(cuts.length ? [make('div', {class: 'cuts'}, ...cuts)] : []), ...rest];
}

let shown = '';
function band() {
  const element = id('band'), {view} = state, step = next();
  element.dataset.verdict = view ? view.verdict : '';
  for (const each of VERDICTS) element.classList.toggle(each, view !== null && view.verdict === each);
  const key = JSON.stringify([view && view.band, step && step.path, state.offline, state.faults.length, enough()]);
  if (key === shown) return;
  shown = key;
  const offline = state.offline ? [make('p', {class: 'small', id: 'offline'}, t('offline'))] : [];
  if (view && enough()) element.replaceChildren(...offline, ...verdict_lines(view));
  else if (step && !enough()) element.replaceChildren(...offline, ...next_lines(step));
  else element.replaceChildren(...offline, make('p', {class: 'big'}, t(state.faults.length ? 'cannot_be_right' : 'asking')));
}

/** @param {string} word @param {string[]} lines */
const list = (word, lines) => lines.length ? [make('h3', {}, t(word)), make('ul', {class: word}, ...lines.map((line) => make('li', {}, line)))] : [];

function ways_out(/** @type {import('./state.js').View} */ view) {
  if (!view.ways_out.length) return [];
  const items = view.ways_out.map((way) => {
    const changes = way.changes || [];
    return make('li', {}, way.says, ...(changes.length ? [button(t('put_in'), () => put_in(changes), {class: 'way', 'aria-label': `${t('put_in')}: ${way.says}`})] : []));
  });
  return [make('h3', {}, t('ways_out')), make('ol', {class: 'ways_out'}, ...items)];
}

let told = '';
function lines() {
  const view = enough() ? state.view : null, key = JSON.stringify(view);
  if (key === told) return;
  told = key;
  id('lines').replaceChildren(...(view ? [...list('warnings', view.warnings), ...list('reasons', view.reasons), ...ways_out(view), ...list('confirm', view.confirm.map((one) => one.says)), ...list('cautions', view.cautions)] : []));
}

function doors() {
  const view = enough() ? state.view : null;
  const show = (/** @type {string} */ name, /** @type {boolean} */ shown) => void (id(name).hidden = !shown);
  show('papers', view !== null);
  show('to-saw', view !== null && view.verdict !== 'refused');
  show('tag', view !== null && view.verdict !== 'refused');
  show('to-choose', view !== null && view.verdict === 'refused');
  show('to-quote', view !== null && Boolean(state.catalogue.prices));
  show('print', Boolean(state.catalogue.printer));
}

export function build_answer() {
  on_change(band);
  on_change(lines);
  on_change(doors);
}
