// The shaft in black lines, as the cut sheet and the measuring form draw it. Lengths are pixels; every function gives SVG.

const INK = 'stroke="#000" fill="#fff"';

/** @typedef {(along: number, off: number) => string} Frame */

/** From a joint's end inwards; `turned`: the joint at the right.
 * @param {number} width @param {number} axis @param {boolean} turned @returns {Frame} */
export const frame = (width, axis, turned) => (along, off) => `${turned ? width - along : along},${axis + off}`;

/** @param {Frame} at @param {number[][]} points @param {string} more */
const shape = (at, points, more = 'stroke-width="2"') => `<polygon points="${points.map(([x, y]) => at(x, y)).join(' ')}" ${INK} ${more}/>`;

/** @param {string} from @param {string} to @param {string} more */
export function line(from, to, more = 'stroke-width="1.5"') {
  const [x1, y1] = from.split(','), [x2, y2] = to.split(',');
  return `<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" stroke="#000" ${more}/>`;
}

/** @param {Frame} at @param {number} along @param {boolean} marked */
export function cross(at, along, marked = false) {
  const [x, y] = at(along, 0).split(',').map(Number);
  const disc = `<circle cx="${x}" cy="${y}" r="10" ${INK} stroke-width="${marked ? 5 : 2}"/>`;
  return disc + line(`${x - 10},${y}`, `${x + 10},${y}`) + line(`${x},${y - 10}`, `${x},${y + 10}`);
}

export const OUTER = 34, INNER = 110;

/** `kind` '' where it is not known: dashed.
 * @param {Frame} at @param {string} kind @param {string} mark the cross that lengths run from */
export function joint(at, kind, mark = '') {
  const wide = kind === 'wide-angle', outer = wide ? OUTER : INNER;
  const dash = `stroke-width="2"${kind ? '' : ' stroke-dasharray="5 4"'}`;
  let out = shape(at, [[outer - 32, 11], [outer - 16, 11], [outer + 3, 7], [outer + 3, -7], [outer - 16, -11], [outer - 32, -11]], dash);
  out += shape(at, [[INNER - 3, 7], [INNER + 16, 12], [INNER + 34, 12], [INNER + 34, -12], [INNER + 16, -12], [INNER - 3, -7]], dash);
  if (wide) out += shape(at, [[OUTER - 12, 17], [INNER + 12, 17], [INNER + 12, -17], [OUTER - 12, -17]]) + cross(at, OUTER, mark === 'outer-cross');
  return out + cross(at, INNER, wide && mark === 'inner-cross');
}

/** @param {Frame} at @param {number} from @param {number} to @param {number} half its half width */
export const tube = (at, from, to, half = 14) => shape(at, [[from, half], [to, half], [to, -half], [from, -half]]);

/** @param {Frame} at @param {number} to @param {number} out */
export function guard(at, to, out = 28) {
  const wall = (/** @type {number} */ s) => shape(at, [[INNER + 8, s * (out + 5)], [INNER + 40, s * out], [to, s * out], [to, s * (out - 6)], [INNER + 40, s * (out - 6)], [INNER + 8, s * (out - 1)]], 'stroke-width="1.5"');
  return wall(1) + wall(-1);
}

/** @param {Frame} at @param {number} along @param {number} reach */
export function gap(at, along, reach) {
  const edge = (/** @type {number} */ o) => [[along + o + 5, reach], [along + o, reach / 3], [along + o + 5, -reach / 3], [along + o, -reach]];
  const path = (/** @type {number[][]} */ p) => `<polyline points="${p.map(([x, y]) => at(x, y)).join(' ')}" stroke="#000" fill="none" stroke-width="1.5"/>`;
  return `<polygon points="${[...edge(0), ...edge(11).reverse()].map(([x, y]) => at(x, y)).join(' ')}" fill="#fff"/>` + path(edge(0)) + path(edge(11));
}

/** What comes off, hatched, with the saw's stroke at its inner end.
 * @param {Frame} at @param {number} from @param {number} to @param {number} top @param {number} bottom */
export function waste(at, from, to, top, bottom) {
  return shape(at, [[from, top], [to, top], [to, bottom], [from, bottom]], 'fill-opacity="1" class="waste" stroke-width="1.5"') +
    line(at(from, top - 5), at(from, bottom + 5), 'stroke-width="4"');
}

/** @param {Frame} at @param {number} from @param {number} to */
export const axis = (at, from, to) => line(at(from, 0), at(to, 0), 'stroke-width="1" stroke-dasharray="16 4 3 4"');

/** A dimension line, with lines up or down to what it measures.
 * @param {Frame} at @param {number} from @param {number} to @param {number} off @param {number} foot where the extension lines end */
export function dimension(at, from, to, off, foot) {
  const arrow = (/** @type {number} */ x, /** @type {number} */ d) => {
    const way = d * Math.sign(to - from);
    return `<polygon points="${at(x, off)} ${at(x + 10 * way, off - 4)} ${at(x + 10 * way, off + 4)}"/>`;
  };
  const past = off + Math.sign(off - foot) * 6;
  return line(at(from, off), at(to, off)) + arrow(from, 1) + arrow(to, -1) + line(at(from, foot), at(from, past), 'stroke-width="1"') + line(at(to, foot), at(to, past), 'stroke-width="1"');
}

/** A cut's letter in a disc, as on the sheet; struck where nothing is cut.
 * @param {number} x @param {number} y @param {string} letter @param {boolean} struck */
export function letter(x, y, letter, struck = false) {
  const word = `<text x="${x}" y="${y + 6}" text-anchor="middle" font-size="17" font-weight="700" fill="#fff">${letter}</text>`;
  return `<circle cx="${x}" cy="${y}" r="13"/>${word}` + (struck ? line(`${x - 15},${y + 15}`, `${x + 15},${y - 15}`, 'stroke-width="3"') : '');
}

const OUTLINE = /** @type {Record<string, (angle: number) => number>} */ ({
  lemon: (a) => 0.78 + 0.22 * Math.abs(Math.cos(a)) ** 12,
  star: (a) => 0.84 + 0.16 * Math.cos(4 * a),
  triangular: (a) => 0.82 + 0.18 * Math.cos(3 * a),
  square: (a) => Math.min(1 / Math.max(Math.abs(Math.cos(a)), Math.abs(Math.sin(a))), 1.25),
  splined: (a) => Math.cos(10 * a) > -0.2 ? 1 : 0.82,
});

/** A tube's section.
 * @param {string} kind a shape's word */
export function section(kind) {
  const outline = OUTLINE[kind] || (() => 1);
  const points = [...Array(120).keys()].map((i) => {
    const a = Math.PI * i / 60, r = 18 * outline(a);
    return `${(24 + r * Math.cos(a)).toFixed(1)},${(24 - r * Math.sin(a)).toFixed(1)}`;
  });
  return `<svg viewBox="0 0 48 48" width="48" height="48" aria-hidden="true"><polygon points="${points.join(' ')}" ${INK} stroke-width="2.5"${OUTLINE[kind] ? '' : ' stroke-dasharray="4 4"'}/></svg>`;
}

// What holds the yoke, over and in the hub of 44 by 28 at (30, 20), by the lock's word; as the papers draw it.
const HOLDS = /** @type {Record<string, string>} */ ({
  'exposed-collar': '<rect x="26" y="14" width="16" height="40" fill="#fff"/><path d="M31 16v36M36 16v36"/><path d="M44 6H24m0 0 6-4v8z" fill="#000"/>',
  'covered-collar': '<rect x="26" y="14" width="16" height="40" fill="#fff"/><path d="M31 16v36M36 16v36"/><path d="M86 8H20v52h66" stroke-dasharray="5 4"/>',
  'exposed-push-pin': '<rect x="40" y="6" width="10" height="30" fill="#000"/>',
  'shrouded-push-pin': '<rect x="40" y="14" width="10" height="22" fill="#000"/><path d="M33 20V10M57 20V10" stroke-width="5"/>',
  'clamp-bolt': '<path d="M30 45h44"/><circle cx="45" cy="42" r="8" fill="#000"/>',
  'tapered-clamp': '<path d="M35 12h20l-6 44h-8z" fill="#000"/>',
  unknown: '<text x="52" y="42" font-size="24" text-anchor="middle" stroke="none" fill="#000">?</text>',
});

/** A lock: the stub from the left with its yoke's hub and fork; of a flange two plates.
 * @param {string} word */
export function lock(word) {
  const coupled = '<path d="M2 28h28M2 40h28" /><rect x="30" y="20" width="44" height="28" fill="#fff"/><path d="M30 28h38M30 40h38" stroke-dasharray="4 3"/><path d="M74 20h18v-5H74M74 48h18v5H74"/>';
  const flange = '<path d="M2 28h36M2 40h36M54 26h34M54 42h34"/><rect x="38" y="8" width="8" height="52" fill="#fff"/><rect x="46" y="8" width="8" height="52" fill="#fff"/><path d="M32 17h28M32 51h28" stroke-width="7"/>';
  return `<svg viewBox="0 0 96 66" width="96" height="66" aria-hidden="true"><g stroke="#000" stroke-width="2" fill="none">${word === 'flange' ? flange : coupled + (HOLDS[word] || '')}</g></svg>`;
}

/** @param {number} width @param {number} height @param {string} inside @param {string} says */
export function picture(width, height, inside, says) {
  return `<svg viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" ${says ? `role="img" aria-label="${says}"` : 'aria-hidden="true"'}>` +
    '<defs><pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="7" height="7" fill="#fff"/><line x1="0" y1="0" x2="0" y2="7" stroke="#000" stroke-width="3"/></pattern></defs>' +
    `${inside}</svg>`;
}
