/**
 * `npm start`: installs what is missing, builds the site, serves it to this computer, and with `--phone` to whoever is
 * on the same network; stays until it is stopped. PORT and BASE may be set in the environment.
 */
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { install } from './install.mjs';
import { root, run, tool } from './machine.mjs';
import { asBase, serve } from './server.mjs';

const EVERY_ADDRESS = '0.0.0.0';
const FIRST_PORT = 4321;
const TRIES = 20;

/** Serves on the first free port from FIRST_PORT on, or on PORT alone when it is set. */
async function serveNearby(options) {
  if (process.env.PORT) return serve({ ...options, port: Number(process.env.PORT) });
  for (let port = FIRST_PORT; port < FIRST_PORT + TRIES; port += 1) {
    const served = await serve({ ...options, port }).catch((error) => {
      if (error.code !== 'EADDRINUSE') throw error;
    });
    if (served) return served;
  }
  return serve(options);
}

const networkAddresses = () =>
  Object.values(networkInterfaces())
    .flat()
    .filter((address) => address?.family === 'IPv4' && !address.internal)
    .map(({ address }) => address);

function sayAddresses(port, base) {
  for (const address of networkAddresses()) {
    console.log(`On a phone in the same network:   http://${address}:${port}${base}`);
  }
  console.log('Everyone in this network can read it there.');
}

async function start() {
  if (!(await install())) return 1;
  const folder = join(root, process.env.OUT_DIR ?? 'dist');
  console.log('Building the notebook …');
  const { code, output } = await run(tool('astro', ['build']), { quiet: true });
  if (code !== 0) {
    console.error(`${output}\nThe build stopped; the reason is above.`);
    return code;
  }
  const base = asBase(process.env.BASE);
  const isForPhone = process.argv.includes('--phone');
  const { port } = await serveNearby({ folder, base, ...(isForPhone && { host: EVERY_ADDRESS }) });
  console.log(`\nThe tension notebook is open at   http://localhost:${port}${base}`);
  if (isForPhone) sayAddresses(port, base);
  else console.log('For a phone in the same network:   npm start -- --phone');
  console.log('\nIt stays open until you press Ctrl+C.');
  return 0;
}

try {
  process.exitCode = await start();
} catch (error) {
  const taken = error.code === 'EADDRINUSE';
  console.error(taken ? `Port ${process.env.PORT} is taken. Choose another PORT.` : error);
  process.exitCode = 1;
}
