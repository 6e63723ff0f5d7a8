// The job as an XML document, edited in place, so that what the page does not know stays in it.
//
// A path names an element from the root's children down and an attribute: shaft/half[tube=inner]@length, fit[2]/shortest@length.
// In brackets stands an attribute's value, or the number among the elements of that name, as the server's faults name them.

const STEP = /^([\w-]+)(?:\[(?:(\d+)|([\w-]+)=([^\]]*))\])?$/;

// Attributes that hold a figure and no length.
const NO_LENGTH = /^(order|date|number|built|speed|power|working|turning|standing|turn|pitch|roll|input-tilt|side-view|plan|phone|irregularity|overlap-.*|angle-.*|connection|onto|name|machine|tractor|customer|hitch|at|why|by|with|series)$/;

/** @param {string} path */
function parts(path) {
  const [way, attribute = ''] = path.split('@');
  return {steps: way ? way.split('/') : [], attribute};
}

/** The child that a step names; null where there is none.
 * @param {Element} parent @param {string} step */
function child(parent, step) {
  const [, name, number, key, value] = /** @type {RegExpExecArray} */ (STEP.exec(step));
  const named = [...parent.children].filter((one) => one.tagName === name && (!key || one.getAttribute(key) === value));
  return named[number ? Number(number) - 1 : 0] || null;
}

/** As deep in the file as its parent's children stand.
 * @param {Element} parent @param {Element} one */
function append(parent, one) {
  /** @type {(node: Node) => number} */ const depth = (node) => node.parentElement ? depth(node.parentElement) + 1 : 0;
  const indent = '\n' + '  '.repeat(depth(parent));
  const last = parent.lastChild;
  if (last && last.nodeType === Node.TEXT_NODE && !(last.nodeValue || '').trim()) last.remove();
  const doc = /** @type {XMLDocument} */ (parent.ownerDocument);
  parent.append(doc.createTextNode(indent + '  '), one, doc.createTextNode(indent));
}

/** @param {Element} parent @param {string} step */
function make(parent, step) {
  const [, name, , key, value] = /** @type {RegExpExecArray} */ (STEP.exec(step));
  for (;;) {
    const one = /** @type {XMLDocument} */ (parent.ownerDocument).createElement(name);
    if (key) one.setAttribute(key, value);
    append(parent, one);
    const found = child(parent, step);
    if (found) return found;
  }
}

/** An element that says nothing any more but which it is.
 * @param {Element} one @param {string} key the attribute that tells which */
const says_nothing = (one, key) => ![...one.childNodes].some((node) => node.nodeType !== Node.TEXT_NODE) && [...one.attributes].every((a) => a.name === key);

const KEPT = ['shaft', 'fit', 'trailed', 'mounted', 'end', 'tubes'];

/** @param {Element} one */
function take_out(one) {
  const before = one.previousSibling;
  if (before && before.nodeType === Node.TEXT_NODE && !(before.nodeValue || '').trim()) before.remove();
  one.remove();
}

export class Job {
  /** @param {string} xml @param {string} [root] */
  constructor(xml, root = 'job') {
    this.doc = new DOMParser().parseFromString(xml, 'application/xml');
    /** What was emptied keeps its place, for it may be typed again, but is not written.
     * @type {WeakMap<Element, string>} */
    this.emptied = new WeakMap();
    this.readable = this.doc.documentElement.tagName === root && !this.doc.querySelector('parsererror');
  }
  get root() { return this.doc.documentElement; }

  /** @param {string} path @returns {Element | null} */
  element(path) {
    let one = /** @type {Element | null} */ (this.root);
    for (const step of parts(path).steps) one = one && child(one, step);
    return one;
  }
  /** @param {string} path */
  get(path) {
    const one = this.element(path);
    return one ? one.getAttribute(parts(path).attribute) || '' : '';
  }
  /** An empty value takes the attribute away; an element that then says nothing is not written.
   * @param {string} path @param {string | null} value */
  set(path, value) {
    const {steps, attribute} = parts(path);
    if (value === null || value === '') return this.unset(path, steps, attribute);
    let one = /** @type {Element} */ (this.root);
    for (const step of steps) one = child(one, step) || make(one, step);
    one.setAttribute(attribute, value);
  }
  /** @param {string} path @param {string[]} steps @param {string} attribute */
  unset(path, steps, attribute) {
    const one = this.element(path);
    if (!one) return;
    if (!attribute) return take_out(one);
    one.removeAttribute(attribute);
    const key = /\[([\w-]+)=/.exec(steps[steps.length - 1] || '');
    if (steps.length && !KEPT.includes(one.tagName)) this.emptied.set(one, key ? key[1] : '');
  }
  /** @param {string} path */
  remove(path) { this.unset(path, parts(path).steps, ''); }
  /** @param {string} path @param {string} name */
  count(path, name) {
    const one = this.element(path);
    return one ? [...one.children].filter((each) => each.tagName === name).length : 0;
  }
  /** Both name the same attribute of the same element.
   * @param {string} one @param {string} other */
  same(one, other) {
    const element = this.element(one);
    return parts(one).attribute === parts(other).attribute && element !== null && element === this.element(other);
  }
  /** Other units from here on: each length that was typed keeps the unit that it was typed in.
   * @param {string} units */
  set_units(units) {
    const old = this.root.getAttribute('units');
    if (old === units) return;
    for (const one of this.doc.querySelectorAll('*')) {
      for (const {name, value} of [...one.attributes]) if (!NO_LENGTH.test(name) && /^-?\d[\d./-]*$/.test(value)) one.setAttribute(name, `${value} ${old}`);
    }
    this.root.setAttribute('units', units);
  }
  text() {
    const declaration = '<?xml version="1.0" encoding="UTF-8"?>\n';
    const copy = /** @type {XMLDocument} */ (this.doc.cloneNode(true)), copies = [...copy.querySelectorAll('*')];
    [...this.doc.querySelectorAll('*')].forEach((one, n) => {
      const key = this.emptied.get(one);
      if (key !== undefined && says_nothing(one, key)) take_out(copies[n]);
    });
    return declaration + new XMLSerializer().serializeToString(copy).replace(/^<\?xml[^>]*\?>\s*/, '') + '\n';
  }
}

/** What the file writes for what was typed: a comma as a point, "29 3/16" as "29-3/16".
 * @param {string} typed */
export function written(typed) {
  return typed.trim().replace(',', '.').replace(/^(\d+)\s+(\d+\/\d+)/, '$1-$2');
}

/** A new job of today.
 * @param {string} units @param {string[]} taken orders that there are */
export function new_job(units, taken) {
  const now = new Date();
  const two = (/** @type {number} */ n) => String(n).padStart(2, '0');
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  let number = 1;
  while (taken.includes(`${day}.${number}`)) ++number;
  return `<job order="${day}.${number}" date="${day}" units="${units}">
  <shaft role="primary">
    <end side="tractor"/>
    <end side="implement"/>
  </shaft>
  <fit/>
</job>`;
}
