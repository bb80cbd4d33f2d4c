// The way to the program: questions, and the stream of events.

const token = location.pathname.split('/')[1];
const wait = (ms) => new Promise((done) => setTimeout(done, ms));

/** Asks; with a body it is a POST. A refusal is an error with the words of the program. */
export async function ask(path, body) {
  const options = body === undefined ? {} : { method: 'POST', headers: { 'Content-Type': 'application/json', 'X-Recipe-Token': token }, body: JSON.stringify(body) };
  const answer = await fetch(path, { cache: 'no-store', ...options });
  const said = await answer.json();
  if (!answer.ok) {
    throw new Error(said.error ?? `The preview answered ${answer.status}.`);
  }
  return said;
}

/** Follows the file: tells of each change, of a lost preview, and of one that is back. */
export function follow({ changed, lost, back }) {
  const source = new EventSource('events');
  source.addEventListener('open', () => back());
  source.addEventListener('changed', (event) => changed(event.data));
  source.addEventListener('error', async () => {
    source.close();
    lost();
    while (!(await isBack())) {
      await wait(500);
    }
    follow({ changed, lost, back });
  });
}

/**
 * Whether the program that we know sits on the port again. Somebody else could sit there meanwhile, so the token is not sent:
 * whoever answers has to show that he knows it.
 */
async function isBack() {
  const nonce = hex(crypto.getRandomValues(new Uint8Array(24)));
  try {
    const answer = await fetch(`/hello?nonce=${nonce}`, { cache: 'no-store', referrerPolicy: 'no-referrer' });
    return answer.ok && await answer.text() === await proof(nonce);
  } catch {
    return false;
  }
}

async function proof(nonce) {
  const bytes = new TextEncoder();
  const key = await crypto.subtle.importKey('raw', bytes.encode(token), { name: 'HMAC', hash: 'SHA-256' }, false, ['sign']);
  return hex(new Uint8Array(await crypto.subtle.sign('HMAC', key, bytes.encode(`${location.port}|${nonce}`))));
}

const hex = (bytes) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
