// The form: together, parted, on the machine, in the order of the bench.
import {all_boxes, box, choice, forget, light, show_faults} from './boxes.js';
import {section} from './drawing.js';
import {closed_figure, draw_all, fit_figure, half_figure} from './figures.js';
import {machine_part} from './machine.js';
import {more_part} from './more.js';
import {MACHINE, asks_cross, machine_of, next} from './next.js';
import {button, changed, edited, id, make, on_change, put, series, state, t, wide_anywhere} from './state.js';

/** @param {string} word @param {...Node} inside */
const part = (word, ...inside) => make('section', {id: word, 'aria-labelledby': `${word}-h`}, make('h2', {id: `${word}-h`}, t(word)), ...inside);

/** Unknown first, then each series by its name and its tubes' section. */
function series_tiles() {
  const tiles = make('div', {class: 'tiles'});
  const element = make('div', {class: 'choice', role: 'group', 'aria-label': t('series'), 'data-path': 'shaft@series'}, make('span', {class: 'caption'}, t('series')), tiles);
  const tile = (/** @type {string} */ name, /** @type {string} */ says, /** @type {string} */ shape, /** @type {() => void} */ touched) => {
    const one = make('button', {type: 'button', class: 'tile', 'data-value': name, onclick: touched});
    one.innerHTML = section(shape);
    one.append(make('span', {}, says));
    tiles.append(one);
  };
  tile('', t('unknown_series'), 'other', () => { state.unknown = true; put('shaft@series', null); });
  for (const one of state.catalogue.series) {
    tile(one.name, one.name, one.shape, () => {
      state.unknown = false;
      for (const path of ['shaft@shape', 'shaft@spacing']) state.job.set(path, null);
      put('shaft@series', one.name);
    });
  }
  on_change(() => tiles.querySelectorAll('button').forEach((/** @type {HTMLElement} */ one) => {
    const held = one.dataset.value ? state.job.get('shaft@series') === one.dataset.value : unknown();
    one.setAttribute('aria-pressed', String(held));
  }));
  return element;
}
const unknown = () => !state.job.get('shaft@series') && (state.unknown || state.job.get('shaft@shape') !== '');

/** Shown only while it is asked for.
 * @param {HTMLElement} element @param {() => boolean} asked */
export function only_if(element, asked) {
  on_change(() => void (element.hidden = !asked()));
  return element;
}

function together_part() {
  const shapes = choice('shaft@shape', 'shape', state.catalogue.shapes.map((/** @type {any} */ one) => ({...one, picture: section(one.word)})), {needed: true});
  const unknown_part = make('div', {class: 'boxes'}, shapes, only_if(box('shaft@spacing', 'spacing'), wide_anywhere), make('p', {class: 'tape'}, t('unknown_series_hint')));
  const ends = ['tractor', 'implement'].map((word) => ({word, says: t(word)}));
  return part('together', make('p', {class: 'tape'}, t('together_hint')), series_tiles(), only_if(unknown_part, unknown), choice('shaft@inner-tube', 'inner_tube', ends, {needed: true}), closed_figure(),
    only_if(make('p', {class: 'tape'}, t('reference_hint')), wide_anywhere));
}

/** @param {string} which */
function guard_gone(which) {
  const path = `shaft/half[tube=${which}]@guard`, gone = () => ['none', 'damaged'].includes(state.job.get(path));
  const element = choice(path, `${which}_guard`, ['none', 'damaged'].map((word) => ({word, says: t(`guard_${word}`)})));
  const whole = button(t('guard_ok'), () => {
    if (gone()) put(path, null);
    const box = /** @type {HTMLElement} */ (document.querySelector(`input[data-path="${path}"]`));
    box.focus();
  }, {class: 'tile', 'data-value': 'whole'});
  element.querySelector('.tiles').prepend(whole);
  on_change(() => whole.setAttribute('aria-pressed', String(state.job.get(path) !== '' && !gone())));
  return element;
}

const parted_part = () => part('parted', make('p', {class: 'tape'}, t('parted_hint')),
  ...['inner', 'outer'].flatMap((which) => [make('h3', {}, t(`${which}_half_heading`)), half_figure(which), guard_gone(which)]));

/** @param {string} path of the element that holds the length */
function position(path) {
  const at = box(`${path}@at`, 'at', 'text');
  const words = [['at_raised', 'at_level', 'at_lowered'], ['at_straight', 'at_left', 'at_right']];
  const group = make('div', {class: 'tiles small', role: 'group', 'aria-label': t('at')});
  const now = () => state.job.get(`${path}@at`).split(', ');
  for (const row of words) for (const word of row) {
    const one = button(t(word), () => {
      const kept = now().filter((each) => each && !row.some((other) => t(other) === each));
      put(`${path}@at`, now().includes(t(word)) ? kept.join(', ') : [t(word), ...kept].reverse().join(', '));
    }, {'aria-pressed': 'false'});
    on_change(() => one.setAttribute('aria-pressed', String(now().includes(t(word)))));
    group.append(one);
  }
  return make('details', {}, make('summary', {}, t('at')), group, at);
}

/** @param {string} fit @param {string} path @param {string} word */
const measured = (fit, path, word) => make('div', {class: 'position boxes'}, box(`${fit}/${path}@length`, word), position(`${fit}/${path}`));

/** How the lengths of a fit are found.
 * @param {string} fit */
function ways(fit) {
  const tiles = make('div', {class: 'tiles'});
  const now = machine_of(fit) || 'measured';
  for (const kind of ['measured', ...Object.keys(MACHINE)]) {
    tiles.append(button(t(`way_${kind}`), () => {
      for (const other of Object.keys(MACHINE)) if (other !== kind) state.job.remove(`${fit}/${other}`);
      if (kind !== 'measured' && !state.job.element(`${fit}/${kind}`)) state.job.set(`${fit}/${kind}@input-tilt`, '0');
      edited();
    }, {class: 'tile', 'aria-pressed': String(now === kind), 'data-value': kind}));
  }
  return make('div', {class: 'choice', role: 'group', 'aria-label': t('way'), 'data-path': `${fit} way`}, make('span', {class: 'caption'}, t('way')), tiles);
}

/** @param {number} number from 1 @param {number} count */
function fit_part(number, count) {
  const fit = `fit[${number}]`, kind = machine_of(fit);
  const lengths = () => make('div', {class: 'positions'}, measured(fit, 'shortest', 'shortest'), measured(fit, 'longest[when=working]', 'longest_working'),
    measured(fit, 'longest[when=turning]', 'longest_turning'), measured(fit, 'longest[when=standing]', 'longest_standing'));
  const name = count > 1 ? [make('h3', {}, t('fit_number', String(number))), box(`${fit}@tractor`, 'fit_tractor', 'text')] : [];
  const has = kind && state.job.element(`${fit}/shortest`) || state.job.element(`${fit}/longest`);
  const away = count > 1 ? [button(t('fit_away'), () => { state.job.remove(fit); edited(); })] : [];
  const crosses = choice(`${fit}@reference`, 'fit_reference', ['outer', 'inner'].map((which) => ({word: `${which}-cross`, says: t(`fit_${which}_cross`)})), {needed: true});
  return make('div', {class: 'fit'}, ...name, ways(fit), only_if(crosses, () => asks_cross(fit)), ...(kind ? [machine_part(fit, kind)] : []), ...(!kind || has ? [lengths()] : []), ...away);
}

let drawn = '';
/** Anew only where tractors or their ways came or went: what is being typed keeps its box. */
function redraw_fits() {
  const count = Math.max(1, state.job.count('', 'fit'));
  const now = [...Array(count).keys()].map((n) => machine_of(`fit[${n + 1}]`) || 'measured').join() + named();
  if (now === drawn) return;
  drawn = now;
  id('fits').replaceChildren(...[...Array(count).keys()].map((n) => fit_part(n + 1, count)), others());
  forget();
}

/** How many are named, the one that is being typed among them. */
const named = () => Math.max(state.job.count('for', 'other-tractor'), state.names);

function others() {
  const count = named();
  const names = [...Array(count).keys()].map((n) => box(`for/other-tractor[${n + 1}]@name`, 'other_tractor', 'text'));
  const element = make('div', {class: 'choice', 'data-path': 'for@other-tractors', role: 'group', 'aria-label': t('other_tractors')}, make('span', {class: 'caption'}, t('other_tractors')), make('div', {class: 'tiles'},
    button(t('other_none'), () => {
      while (state.job.element('for/other-tractor')) state.job.remove('for/other-tractor');
      state.names = 0;
      put('for@other-tractors', 'none');
    }, {class: 'tile', 'data-value': 'none', 'aria-pressed': String(state.job.get('for@other-tractors') === 'none')}),
    button(t('other_measure'), () => { state.job.set('for@other-tractors', null); put(`fit[${Math.max(1, state.job.count('', 'fit')) + 1}]@tractor`, t('tractor_2')); }, {class: 'tile', 'data-value': 'measure'}),
    button(t('other_name'), () => { state.job.set('for@other-tractors', null); state.names = count + 1; edited(); }, {class: 'tile', 'data-value': 'name'})), ...names);
  on_change(() => element.querySelector('[data-value=none]')?.setAttribute('aria-pressed', String(state.job.get('for@other-tractors') === 'none')));
  return element;
}

/** Each box as the job says, the next one lit, each fault at its box. */
function sync() {
  redraw_fits();
  for (const one of all_boxes()) one.sync();
  const step = next();
  light(step ? step.path : '');
  document.querySelectorAll('[data-path].choice').forEach((one) => one.classList.toggle('lit', step !== null && /** @type {HTMLElement} */ (one).dataset.path === step.path));
  document.querySelectorAll('[data-joint]').forEach((one) => one.classList.toggle('lit', step !== null && step.path === `shaft/end[side=${(/** @type {HTMLElement} */ (one).dataset.joint || '').split(' ')[0]}]@joint`));
  document.querySelectorAll('[data-spot]').forEach((one) => one.classList.toggle('lit', step !== null && (/** @type {HTMLElement} */ (one).dataset.spot || '').startsWith(step.path)));
  for (const which of ['inner', 'outer']) {
    const stop = document.querySelector(`[data-path="shaft/half[tube=${which}]@stop-depth"]`)?.closest('label');
    if (stop) stop.classList.toggle('wanted', series() === null);
  }
  id('homeless').replaceChildren(...show_faults().map((fault) => make('li', {}, fault.says)));
}

export function build_form() {
  id('form').append(together_part(), parted_part(), part('on_machine', make('p', {class: 'tape danger'}, t('on_machine_hint')), fit_figure(() => 'fit[1]'), make('div', {id: 'fits'})), more_part());
  on_change(sync);
  changed();
  draw_all();
}
export function rebuild_fits() { drawn = ''; }
