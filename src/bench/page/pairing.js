// A tablet that the PC beside the saw does not know yet types the code that the PC's own page shows.
import {id, make, state, t} from './state.js';

/** By words that came with the server's refusal; without them there is nothing to type a code for.
 * @param {string} says @param {() => void} then */
export function build_pairing(says, then) {
  const form = id('pairing'), why = make('p', {role: 'status'}, says);
  form.hidden = false;
  if (!state.catalogue.words) return form.replaceChildren(why);
  const code = make('input', {id: 'code', inputmode: 'numeric', autocomplete: 'one-time-code', maxlength: '9'});
  form.replaceChildren(make('h1', {}, t('pair-heading')), make('p', {}, t('pair-how')), make('label', {class: 'box text', for: 'code'}, make('span', {class: 'caption'}, t('pair-code')), make('span', {class: 'entry'}, code)),
    make('button', {type: 'submit'}, t('pair-send')), why, make('p', {class: 'danger'}, t('pair-plain')));
  form.onsubmit = async (e) => {
    e.preventDefault();
    const reply = await fetch('/pair', {method: 'POST', headers: {'Content-Type': 'application/xml'}, body: `<pair code="${code.value.replace(/\D/g, '')}"/>`});
    code.value = '';
    if (!reply.ok) return void (why.textContent = (await reply.json()).says);
    form.hidden = true;
    then();
  };
}

/** On the PC's own page: the code, and who is paired. */
export function build_pair_door() {
  const door = id('pair-door');
  door.hidden = !state.catalogue.pairing;
  door.addEventListener('toggle', async () => {
    if (!door.hasAttribute('open')) return;
    const reply = await fetch('/pairing');
    if (!reply.ok) return;
    const pairing = await reply.json();
    id('pair-says').replaceChildren(make('p', {}, t('pair_hint', pairing.address)), make('p', {class: 'verdict', id: 'pair-code'}, pairing.code.replace(/(\d{4})(\d{4})/, '$1 $2')), make('p', {class: 'small'}, t('pair_read_along')),
      make('ul', {}, ...pairing.tablets.map((/** @type {any} */ one) => make('li', {}, `${one.number} · ${one.paired} · ${one.client}`))));
  });
}
