// The drawings with a box at each dimension. A figure draws itself anew for the width that it has.
import {box} from './boxes.js';
import {INNER, OUTER, axis, dimension, frame, gap, guard, joint, letter, picture, tube, waste} from './drawing.js';
import {enough} from './next.js';
import {closed_reference, escaped, inner_side, joint_at, make, on_change, put, state, t, wide_anywhere} from './state.js';

/** Height of a box with its caption. */
const box_height = () => (document.body.classList.contains('glove') ? 96 : 76) + (innerWidth < 600 ? 20 : 0);
const SIDES = ['tractor', 'implement'];

/** @typedef {{element: HTMLElement, draw: () => void}} Figure */
/** @type {Figure[]} */ const figures = [];
export function draw_all() {
  for (const one of figures) if (document.contains(one.element) && one.element.clientWidth > 0) one.draw();
}
on_change(draw_all);
addEventListener('resize', draw_all);

/** @param {string} name @param {(width: number, place: (one: HTMLElement, x: number, y: number, width?: number) => void) => [number, string, string]} drawn gives height, SVG and what it shows */
function figure(name, drawn) {
  const element = make('div', {class: 'figure', id: name});
  const picture_at = make('div');
  element.append(picture_at);
  const place = (/** @type {HTMLElement} */ one, /** @type {number} */ x, /** @type {number} */ y, width = 0) => {
    if (one.parentElement !== element) element.append(one);
    one.style.left = `${x}px`;
    one.style.top = `${y}px`;
    if (width) one.style.width = `${width}px`;
  };
  figures.push({element, draw: () => {
    const width = element.clientWidth;
    const [height, inside, says] = drawn(width, place);
    picture_at.innerHTML = picture(width, height, inside, escaped(says));
  }});
  return element;
}

/** Buttons on the crosses of wide-angle joints: touched, lengths run from that one.
 * @param {() => string} path @param {() => string} now */
function cross_buttons(path, now) {
  return SIDES.flatMap((side) => ['outer-cross', 'inner-cross'].map((which) => {
    const one = make('button', {type: 'button', class: 'spot', 'data-spot': `${path()} ${side} ${which}`});
    one.addEventListener('click', () => put(path(), which));
    return {side, which, one, show: (/** @type {(one: HTMLElement, x: number, y: number) => void} */ place, /** @type {number} */ width, /** @type {number} */ y) => {
      one.hidden = joint_at(side) !== 'wide-angle';
      one.setAttribute('aria-label', `${t(which)}, ${t(side)}`);
      one.setAttribute('aria-pressed', String(now() === which));
      const along = which === 'outer-cross' ? OUTER : INNER;
      place(one, (side === 'tractor' ? along : width - along) - spot() / 2, y - spot() / 2);
    }};
  }));
}

const spot = () => document.body.classList.contains('glove') ? 64 : 48;

/** Where a length between crosses begins at this side.
 * @param {string} side @param {string} reference */
const from_cross = (side, reference) => joint_at(side) === 'wide-angle' && reference === 'outer-cross' ? OUTER : INNER;

/** Both halves in each other, from the tractor's joint to the machine's.
 * @param {number} width @param {number} y @param {string} reference @param {number} out how far they are pulled out */
function together(width, y, reference, out) {
  const left = frame(width, y, false), right = frame(width, y, true);
  const outer_at = inner_side() === 'tractor' ? right : left, inner_at = inner_side() === 'tractor' ? left : right;
  const end = width - INNER - 46 - out;
  return tube(inner_at, INNER + 30, width / 2 + 20, 10) + tube(outer_at, INNER + 30, end) +
    guard(inner_at, width / 2, 24) + guard(outer_at, end - 16, 30) + axis(left, 4, width - 4) + joint(left, joint_at('tractor'), reference) + joint(right, joint_at('implement'), reference);
}

const TILE = INNER + 40;              // a joint's picture

/** A joint's own tile in the drawing.
 * @param {string} side @param {string} kind */
function joint_tile(side, kind) {
  const at = frame(TILE, 20, side === 'implement');
  const one = make('button', {type: 'button', class: 'tile joint', 'data-joint': `${side} ${kind}`});
  one.innerHTML = picture(TILE, 40, joint(at, kind), '');
  one.append(make('span', {}, t(kind)));
  one.addEventListener('click', () => set_joint(side, kind));
  return {side, kind, one};
}
/** @param {string} side @param {string} kind */
function set_joint(side, kind) {
  state.job.set(`shaft/end[side=${side}]@joint`, kind);
  const fits = [...Array(state.job.count('', 'fit')).keys()].map((n) => `fit[${n + 1}]@reference`);
  if (!wide_anywhere()) for (const path of ['shaft/closed@reference', ...fits, 'shaft@spacing']) state.job.set(path, null);
  put(`shaft/end[side=${side}]@joint`, kind);
}

export function closed_figure() {
  const closed = box('shaft/closed@length', 'closed');
  const spots = cross_buttons(() => 'shaft/closed@reference', closed_reference);
  const tiles = SIDES.flatMap((side) => ['standard', 'wide-angle'].map((kind) => joint_tile(side, kind)));
  return figure('together', (width, place) => {
    const y = box_height() + 54, reference = closed_reference();
    place(closed, width / 2 - 85, 0, 170);
    spots.forEach((spot) => spot.show(place, width, y));
    tiles.forEach(({side, kind, one}, n) => {
      one.setAttribute('aria-pressed', String(joint_at(side) === kind));
      one.setAttribute('aria-label', `${t(side)}: ${t(kind)}`);
      const step = n % 2, beside = width > 4 * (TILE + 16) + 24;
      const from_end = beside ? step * (TILE + 16) : 0;
      place(one, side === 'tractor' ? from_end : width - TILE - 4 - from_end, y + 66 + (beside ? 0 : step * 94), TILE + 4);
    });
    const from = from_cross('tractor', reference), to = width - from_cross('implement', reference);
    const names = `<text x="2" y="${y + 56}" font-size="17" font-weight="700">${escaped(t('tractor'))}</text><text x="${width - 2}" y="${y + 56}" font-size="17" font-weight="700" text-anchor="end">${escaped(t('implement'))}</text>`;
    return [y + (width > 4 * (TILE + 16) + 24 ? 162 : 256), together(width, y, reference, 0) + dimension(frame(width, y, false), from, to, -58, -12) + names, t('closed_drawing')];
  });
}

/** The cut of a letter, as the server said it.
 * @param {string} which */
export const cut_of = (which) => (enough() ? state.view : null)?.band.lengths.find((one) => one.letter === which) || null;

/** A letter beside its cut; struck where nothing comes off.
 * @param {number} x @param {number} y @param {string} which */
function cut_mark(x, y, which) {
  const cut = cut_of(which);
  if (!cut) return '';
  return letter(x, y, which, !cut.cut) + `<text x="${x}" y="${y + 32}" text-anchor="middle" font-size="16" font-weight="700">${escaped(cut.cut ? cut.says : '')}</text>`;
}

const side_of = (/** @type {string} */ which) => which === 'inner' ? inner_side() : inner_side() === 'tractor' ? 'implement' : 'tractor';
const LETTERS = /** @type {Record<string, string[]>} */ ({inner: ['A', 'C'], outer: ['B', 'D']});
const OFF = 60;                       // what comes off, drawn

/** A half of the shaft, what comes off hatched.
 * @param {string} which @param {import('./drawing.js').Frame} at @param {number} end of its tube @param {number} guard_end */
function half(which, at, end, guard_end) {
  const [on_guard, on_tube] = LETTERS[which].map(cut_of), collar = which === 'inner' ? 12 : 15;
  let inside = guard(at, guard_end, 28) + tube(at, INNER + 30, end, collar);
  if (on_tube?.cut) inside += waste(at, end - OFF, end, -collar, collar);
  if (on_guard?.cut) for (const s of [1, -1]) inside += waste(at, guard_end - 50, guard_end, s * 28, s * 22);
  return inside + axis(at, 4, end + 8) + joint(at, joint_at(side_of(which)), 'inner-cross');
}

/** Both halves as they are marked at the saw: letters, what comes off, what is kept from the inner cross. */
export function saw_figure() {
  return figure('saw-halves', (width) => [400, ['inner', 'outer'].map((which, n) => saw_half(which, width, 200 * n)).join(''), t('saw_drawing')]);
}
/** @param {string} which @param {number} width @param {number} top */
function saw_half(which, width, top) {
  const turned = side_of(which) === 'implement', y = top + 100, at = frame(width, y, turned), end = width - 12, guard_end = end - 34;
  const letter_x = turned ? 46 : width - 46, middle = turned ? width - (INNER + end - OFF) / 2 : (INNER + end - OFF) / 2, kept = cut_of(LETTERS[which][1]);
  const heading = `<text x="${turned ? width - 2 : 2}" y="${top + 20}" font-size="16" font-weight="700"${turned ? ' text-anchor="end"' : ''}>${escaped(t(`${which}_half_heading`))}</text>`;
  const keep = kept?.keep_says ? `<text x="${middle}" y="${y + 68}" font-size="15" font-weight="700" text-anchor="middle">${escaped(kept.keep_says)}</text>` : '';
  return heading + half(which, at, end, guard_end) + gap(at, width / 2, 34) + dimension(at, INNER, kept?.cut ? end - OFF : end, 50, 14) + keep + cut_mark(letter_x, top + 36, LETTERS[which][0]) + cut_mark(letter_x, y + 54, LETTERS[which][1]);
}

/** @param {string} which inner or outer: the half of this tube */
export function half_figure(which) {
  const path = `shaft/half[tube=${which}]`;
  const guard_box = box(`${path}@guard`, 'guard'), length = box(`${path}@length`, `${which}_half`);
  const stop = box(`${path}@stop-depth`, `${which}_stop_depth`);
  const letters = LETTERS[which];
  return figure(`${which}-half`, (width, place) => {
    const turned = side_of(which) === 'implement', y = box_height() + 46, at = frame(width, y, turned);
    const end = width - 12, guard_end = end - 34, box_width = Math.min(190, width - 204), middle = INNER + (guard_end - INNER) / 2 - 14;
    const x = (turned ? width - middle : middle) - box_width / 2;
    place(guard_box, x, 2, box_width);
    place(length, x, y + 42, box_width);
    place(stop, x, y + 50 + box_height(), box_width);
    const letter_x = turned ? 46 : width - 46;
    let inside = half(which, at, end, guard_end) + gap(at, width / 2, 34);
    inside += dimension(at, INNER, guard_end, -34, -14) + dimension(at, INNER, end, 78, 14);
    inside += cut_mark(letter_x, 16, letters[0]) + cut_mark(letter_x, y + 96, letters[1]);
    return [y + 62 + 2 * box_height(), inside, t(`${which}_drawing`)];
  });
}

/** The shaft between its two stubs.
 * @param {() => string} fit path of the first fit */
export function fit_figure(fit) {
  const reference = () => state.job.get(`${fit()}@reference`);
  const spots = cross_buttons(() => `${fit()}@reference`, reference);
  return figure('on-machine', (width, place) => {
    const grooves = state.job.get(`${fit()}@between`) === 'grooves', y = 66, at = frame(width, y, false);
    spots.forEach((spot) => { spot.show(place, width, y); if (grooves) spot.one.hidden = true; });
    const from = grooves ? 12 : from_cross('tractor', reference()), to = width - (grooves ? 12 : from_cross('implement', reference()));
    const says = `<text x="${width / 2}" y="18" text-anchor="middle" font-size="16" font-weight="700">${escaped(t(grooves ? 'between_grooves' : wide_anywhere() ? `between_${reference().replace('-', '_') || 'which'}` : 'between_crosses'))}</text>`;
    return [y + 46, together(width, y, grooves ? '' : reference(), 60) + (wide_anywhere() && !grooves && !reference() ? '' : dimension(at, from, to, -38, -12)) + says, t('fit_drawing')];
  });
}
