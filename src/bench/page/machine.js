// The machine's own dimensions in the place of measured lengths, and its drawing that moves through its range.
import {box} from './boxes.js';
import {MACHINE, RANGE, enough, machine_of} from './next.js';
import {in_units, post} from './server.js';
import {button, make, on_edit, state, t} from './state.js';

/** @typedef {{range: string, says: string, side?: string, top?: string}} Frame */

const PLAY = 120; // milliseconds a frame

/** An SVG that the server drew, as an element.
 * @param {string} text */
export function drawn(text) {
  const doc = new DOMParser().parseFromString(text, 'image/svg+xml');
  return doc.querySelector('parsererror') ? make('span') : document.importNode(doc.documentElement, true);
}

/** @param {string} fit @param {string} kind */
export function machine_part(fit, kind) {
  const word = (/** @type {string} */ a) => `${kind}_${a.replace(/-/g, '_')}`;
  const kind_of = (/** @type {string} */ a) => ['input-tilt', 'turn', 'pitch', 'roll'].includes(a) ? 'angle' : 'length';
  const boxes = MACHINE[kind].map((a) => box(`${fit}/${kind}@${a}`, word(a), kind_of(a)));
  const ranges = ['turning', 'working', 'standing'].map((when) => make('fieldset', {}, make('legend', {}, t(`range_${when}`)),
    ...RANGE[kind].map((a) => box(`${fit}/${kind}/${when}@${a}`, word(a), kind_of(a)))));
  return make('div', {}, make('p', {class: 'tape'}, t(`way_${kind}_hint`)), make('div', {class: 'boxes'}, ...boxes, box(`${fit}/${kind}@plus-minus`, 'plus_minus')), make('p', {class: 'tape'}, t(`ranges_${kind}_hint`)),
    make('div', {class: 'boxes'}, ...ranges), mover(fit));
}

/** @param {string} fit */
function mover(fit) {
  const show = make('div', {class: 'moving'}), says = make('output'), extremes = make('ul');
  const slide = make('input', {type: 'range', min: 0, value: 0, 'aria-label': t('move'), oninput: () => put_frame()});
  const play = button(t('play'), () => void (timer ? stop() : start()));
  const element = make('div', {class: 'mover', hidden: true}, show, says, make('div', {class: 'row'}, play, slide), extremes);
  /** @type {Frame[]} */ let frames = [];
  let timer = 0, ticket = 0, asked = '';
  const put_frame = () => {
    const one = frames[Number(slide.value)];
    if (!one) return;
    show.replaceChildren(...[one.side, one.top].flatMap((each) => each ? [drawn(each)] : []));
    says.textContent = `${t(`range_${one.range}`)}: ${one.says}`;
  };
  const stop = () => { clearInterval(timer); timer = 0; play.textContent = t('play'); };
  const start = () => {
    play.textContent = t('stop');
    timer = window.setInterval(() => {
      if (!document.contains(element)) return stop();
      slide.value = String((Number(slide.value) + 1) % frames.length);
      put_frame();
    }, PLAY);
  };
  const refresh = async () => {
    const kind = machine_of(fit), machine = kind && state.job.element(`${fit}/${kind}`);
    const now = machine ? new XMLSerializer().serializeToString(machine) + state.job.get('shaft@series') + ['tractor', 'implement'].map((side) => state.job.get(`shaft/end[side=${side}]@joint`) + state.job.get(`shaft/end[side=${side}]@connection`)) : '';
    if (!document.contains(element) || !now || !enough() || now === asked) return;
    const mine = ++ticket;
    const reply = await post(`/machine?${in_units()}`, state.job.text());
    if (mine !== ticket || reply.status !== 200) return;
    asked = now;
    const with_machine = [...Array(state.job.count('', 'fit')).keys()].filter((n) => machine_of(`fit[${n + 1}]`));
    const mine_of = reply.json.fits[with_machine.indexOf(Number(fit.slice(4, -1)) - 1)] || {frames: [], extremes: []};
    frames = mine_of.frames;
    element.hidden = frames.length === 0 && !mine_of.says;
    says.textContent = mine_of.says || '';
    slide.max = String(Math.max(0, frames.length - 1));
    extremes.replaceChildren(...(mine_of.extremes || []).map((/** @type {any} */ one) => make('li', {}, one.says)));
    put_frame();
  };
  let rest = 0;
  const later = () => { clearTimeout(rest); rest = window.setTimeout(refresh, 400); };
  on_edit(later);
  later();
  return element;
}
