// The answer, always in sight: the band with verdict, lengths or the next thing to measure; then why, what would serve, papers.
import {box_of, hint_of} from './boxes.js';
import {after, enough, next} from './next.js';
import {show_view} from './views.js';
import {again, button, changed, edited, id, make, measured_again, on_change, state, t} from './state.js';

/** @typedef {import('./state.js').Change} Change */

/** What the tape says: written by a touch it is to be measured again. */
const READ = /@(length|guard|reference|stop-depth|shoulder|spacing|lock|device|connection|turn|pitch|lowest|highest|pin-behind)$/;

/** What was written is a limit that the machine does not have yet: what is measured once it has is typed. */
const MACHINE_MUST_MOVE = /^fit.*(shortest|longest).*@length$/;

/** Puts in what would serve: the server said where. No cut stands before the figure was measured again.
 * @param {Change[]} changes */
function put_in(changes) {
  for (const {path, value} of changes) {
    state.job.set(path, value);
    const at = path.split('@');
    if (value === null && at.length === 1) state.job.remove(path);
    const own = box_of(path)?.path || path.replace(/^fit(?=[@/])/, 'fit[1]');
    if (value !== null && READ.test(path) && !again().includes(own)) state.saw.again = [...again(), own];
  }
  state.view = null;
  edited();
  if (again().length) go_to_next();
}

/** Brings the box to the eye and the hand.
 * @param {string} path */
export function go_to(path) {
  const one = /** @type {HTMLElement | null} */ (document.querySelector(`[data-path="${path}"]`)) || /** @type {HTMLElement | null} */ (document.querySelector('[data-joint].lit, [data-spot].lit'));
  if (!one) return;
  for (let up = one.parentElement; up; up = up.parentElement) if (up instanceof HTMLDetailsElement) up.open = true;
  const place = one.getBoundingClientRect(), bar = id('bar').getBoundingClientRect(), top = bar.left < place.right && bar.right > place.left ? bar.bottom : 0;
  if (place.top < top + 40 || place.bottom > innerHeight - 130) one.scrollIntoView({block: 'center'});
  const target = one.matches('input') ? one : /** @type {HTMLElement} */ (one.closest('.figure, .choice')) || one; // never a button: the next key would answer
  if (!target.matches('input')) target.tabIndex = -1;
  target.focus({preventScroll: true});
}

export function go_to_next() {
  const step = next();
  if (step) go_to(step.path);
}

/** From a box to the next: one that is empty in the order of the form, or else the one below.
 * @param {{path: string, target: HTMLElement}} from */
export function go_on(from) {
  const step = after(from.path);
  if (step) return go_to(step.path);
  if (step === null) return go_to_next();
  const seen = /** @type {HTMLElement[]} */ ([...document.querySelectorAll('main input[data-path]')]).filter((one) => one.offsetParent !== null);
  seen[seen.indexOf(from.target) + 1]?.focus();
}

/** What a touch wrote, as it stands.
 * @param {string} path */
function as_written(path) {
  const value = state.job.get(path);
  return path.endsWith('@reference') ? t(value) : /[a-z]$/.test(value) ? value : `${value} ${state.job.get('@units')}`;
}

/** The way to the next box, and past it where it may be left out. */
function still() {
  const step = next(), key = step ? step.path + enough() : '';
  if (id('still').dataset.key === key) return;
  id('still').dataset.key = key;
  id('still').replaceChildren(...(step ? [...(enough() ? [make('p', {}, t('still', t(step.word)))] : []), button(t('go'), go_to_next, {id: 'go'}),
    ...(step.must ? [] : [button(t('skip'), () => { state.skipped.add(step.path); changed(); }, {id: 'skip'})])] : []));
}

/** @param {import('./next.js').Step} step */
function next_lines(step) {
  const hint = hint_of(box_of(step.path)?.word || step.word);
  return [make('p', {class: 'small'}, t(step.again ? 'next_again' : 'next')), make('p', {class: 'big', id: 'next'}, t(step.word)),
    ...(step.path.startsWith('fit') ? [make('p', {class: 'small nothing-moves'}, t('nothing_moves'))] : []), ...(hint ? [make('p', {class: 'small'}, hint)] : []),
    ...(step.again && !MACHINE_MUST_MOVE.test(step.path) ? [button(t('again_holds', as_written(step.path)), () => { measured_again(step.path); edited(); }, {id: 'again'})] : [])];
}

function verdict_lines(/** @type {import('./state.js').View} */ view) {
  const cuts = view.band.lengths.map((one) => make('div', {class: `cut${one.cut ? '' : ' none'}`, 'data-letter': one.letter, 'data-mm': String(one.mm ?? '')},
    make('span', {class: 'disc'}, one.letter), make('span', {class: 'length'}, one.says), make('span', {class: 'what'}, one.what), ...(one.keep_says ? [make('span', {class: 'keep'}, kept(one))] : [])));
  const why = view.reasons.length ? [button(view.reasons[0], to_reasons, {id: 'why'})] : [];
  const unchecked = view.verdict !== 'refused' && view.not_checked.length ? [button(t('unchecked', [...new Set(view.not_checked.map((one) => t(`unchecked_${one.id}`)))].join(' · ')), () => to_part('unchecked_list'), {id: 'unchecked'})] : [];
  return [make('p', {class: 'verdict'}, view.band.says), ...why, ...(cuts.length ? [make('div', {class: 'cuts'}, ...cuts)] : []), ...unchecked];
}

/** A kept length in inches is rounded down to a sixteenth: beside it what it is.
 * @param {import('./state.js').Cut} one */
const kept = (one) => state.job.get('@units') === 'in' && one.keep_mm !== null ? `${one.keep_says} ${one.keep_mm.toFixed(1)} mm` : one.keep_says || '';

/** @param {string} word heading of the list */
function to_part(word) {
  const part = /** @type {HTMLElement | null} */ (document.querySelector(`#lines [data-part="${word}"]`));
  if (!part) return;
  part.tabIndex = -1;
  part.scrollIntoView();
  part.focus({preventScroll: true});
}
const to_reasons = () => to_part('reasons');

let shown = '';
function band() {
  const element = id('band'), view = enough() ? state.view : null, step = next();
  element.dataset.verdict = view ? view.verdict : '';
  const key = JSON.stringify([view && view.band, view && view.reasons[0], view && view.not_checked, state.job.get('@units'), step && step.path, step && step.again && as_written(step.path), state.offline, state.faults.length, enough()]);
  if (key === shown) return;
  shown = key;
  const offline = state.offline ? [make('p', {class: 'small', id: 'offline'}, t('offline'))] : [];
  if (view) element.replaceChildren(...offline, ...verdict_lines(view));
  else if (step && !enough()) element.replaceChildren(...offline, ...next_lines(step));
  else element.replaceChildren(...offline, make('p', {class: 'big'}, t(state.faults.length ? 'cannot_be_right' : 'asking')));
}

/** @param {string} word @param {string[]} lines */
const list = (word, lines) => lines.length ? [make('h3', {'data-part': word}, t(word)), make('ul', {class: word}, ...lines.map((line) => make('li', {}, line)))] : [];

function ways_out(/** @type {import('./state.js').View} */ view) {
  if (!view.ways_out.length) return [];
  const items = view.ways_out.map((way) => {
    const choices = way.choices.map((one) => button(one.says || t('put_in'), () => put_in(one.changes), {class: 'way', 'aria-label': `${one.says || t('put_in')}: ${way.says}`}));
    return make('li', {class: way.number ? '' : 'first-of-all'}, way.says, ...choices);
  });
  return [make('h3', {}, t('ways_out')), make('ol', {class: 'ways_out'}, ...items)];
}

// Where what a check wants is typed.
const FEEDS = /** @type {Record<string, string>} */ ({'closing-clearance': 'fit[1]/shortest@length', 'overlap-working': 'fit[1]/longest[when=working]@length', 'overlap-turning': 'fit[1]/longest[when=turning]@length',
  'overlap-standing': 'fit[1]/longest[when=standing]@length', 'tube-left': 'shaft/half[tube=outer]@length', 'shortening-allowed': 'shaft/half[tube=inner]@length', 'guard-clearance': 'shaft/half[tube=inner]@guard',
  'guard-cover': 'shaft/half[tube=inner]@guard', 'guard-setback': 'shaft/half[tube=inner]@guard', 'joint-angle-tractor': 'fit[1]/angle[side=tractor]@working', 'joint-angle-implement': 'fit[1]/angle[side=implement]@working',
  irregularity: 'fit[1]/angle[side=tractor]@working', locking: 'shaft/end[side=tractor]@lock', connection: 'shaft/end[side=tractor]@connection', 'overload-device': 'shaft/end[side=implement]@device', rating: 'for@power', condition: 'shaft/condition@guard'});

/** @param {import('./state.js').View} view */
function unchecked_list(view) {
  if (view.verdict === 'refused' || !view.not_checked.length) return [];
  const items = view.not_checked.map((one) => make('li', {}, button(one.says, () => { show_view('form'); go_to(FEEDS[one.id] || ''); }, {class: 'way', 'data-unchecked': one.id})));
  return [make('h3', {'data-part': 'unchecked_list'}, t('unchecked_list')), make('ul', {class: 'ways_out'}, ...items)];
}

let told = '';
function lines() {
  const view = enough() ? state.view : null, key = JSON.stringify(view);
  if (key === told) return;
  told = key;
  id('lines').replaceChildren(...(view ? [...list('warnings', view.warnings), ...list('reasons', view.reasons), ...ways_out(view), ...list('confirm', view.confirm.map((one) => one.why)), ...unchecked_list(view), ...list('cautions', view.cautions)] : []));
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
  id('band').addEventListener('click', (event) => { if (id('band').dataset.verdict === 'refused' && !(/** @type {HTMLElement} */ (event.target)).closest('button')) to_reasons(); });
  on_change(band);
  on_change(still);
  on_change(lines);
  on_change(doors);
}
