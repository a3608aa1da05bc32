import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { eventsOf } from './events-of.ts';
import { now, type StreamingWrench } from './wrench-streams.ts';

/** Opens the same terminals with the same library, looks for the identity in lines of results, and tells it at once. */
const ECHO = `
const { SerialPort, ReadlineParser } = require('serialport');
const told = new Set();
for (const path of JSON.parse(process.argv[1])) {
  new SerialPort({ path, baudRate: 115200 }).pipe(new ReadlineParser()).on('data', (line) => {
    if (line.startsWith('r ')) for (const answer of told) answer.write('data: ' + line.split(' ')[7] + '\\n\\n');
  });
}
const server = require('node:http').createServer((_, answer) => {
  answer.writeHead(200, { 'content-type': 'text/event-stream' });
  answer.flushHeaders();
  told.add(answer);
}).listen(0, '127.0.0.1', () => setTimeout(() => console.log(server.address().port), 1000));
`;

/** A bare echo of results from the terminals to one listener; when each was heard, by identity, ms since 1970. */
export async function echoed(
  wrenches: readonly StreamingWrench[],
  work: () => Promise<unknown>,
): Promise<ReadonlyMap<string, number>> {
  const heard = new Map<string, number>();
  const paths = JSON.stringify(wrenches.map(({ pty }) => pty.path));
  const child = spawn(process.execPath, ['-e', ECHO, paths], { stdio: ['ignore', 'pipe', 'inherit'] });
  const [port] = await once(child.stdout, 'data');
  const end = await eventsOf(`http://127.0.0.1:${String(port).trim()}/`, (id) => heard.set(id, now()));
  await work();
  end();
  child.kill();
  await once(child, 'exit');
  return heard;
}
