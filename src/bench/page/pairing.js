// A tablet that the PC beside the saw does not know yet: the code that it shows is typed in here.
import {id} from './state.js';

/** @param {() => void} then */
export function build_pairing(then) {
  id('pairing').hidden = false;
  const code = /** @type {HTMLInputElement} */ (id('code'));
  id('pairing').addEventListener('submit', async (e) => {
    e.preventDefault();
    const reply = await fetch('/pair', {method: 'POST', headers: {'Content-Type': 'application/xml'}, body: `<pair code="${code.value.replace(/\D/g, '')}"/>`});
    code.value = '';
    if (!reply.ok) return void code.setAttribute('aria-invalid', 'true');
    id('pairing').hidden = true;
    then();
  });
}
