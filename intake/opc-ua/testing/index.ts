export { examplePull } from '../../serial/example.ts';
export { type JoiningServer, startJoiningServer } from './joining-server.ts';
export { type Wire, wireTo } from './proxy.ts';
