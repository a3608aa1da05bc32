import type { Device, WayIn } from '@clampwright/core/device';
import type { LineDescription } from '@clampwright/core/line';
import { openSerial, type SerialEvent } from '@clampwright/intake/serial';
import type { Deps } from '../deps.ts';
import { torqueEvery } from '../wrenches/torque-every.ts';
import { inboxOf } from './inbox.ts';
import type { RunningDevice } from './runs.ts';
import type { Standing } from './standing.ts';

/** A wrench on a serial port, its lines read after a description. */
export function runSerial(
  deps: Deps,
  device: Device,
  way: Extract<WayIn, { kind: 'serial' }>,
  lines: LineDescription,
  standing: Standing,
): RunningDevice {
  const isDue = torqueEvery();
  const hear = (event: SerialEvent): void => {
    switch (event.kind) {
      case 'connected':
        return standing.state('connected');
      case 'lost':
        return standing.state('lost', event.detail);
      case 'unreadable':
        standing.heard(event.raw, deps.now().toISOString());
        standing.count('unreadable', event.lines);
        return standing.fault({ kind: 'line', ...event.fault });
      case 'sample':
        return tellTorque(event);
      case 'pull':
        standing.heard(event.raw, deps.now().toISOString());
        return void inbox.put(event.pull);
    }
  };
  const tellTorque = ({ pull, elapsedS, torqueNm, angleDeg = 0 }: Extract<SerialEvent, { kind: 'sample' }>): void => {
    if (!isDue(pull, elapsedS)) return;
    standing.heard('', deps.now().toISOString());
    const taken = device.wrenchId === undefined ? undefined : deps.ports.inHand(device.wrenchId);
    if (!taken) return;
    deps.listeners.tell(taken.jobId, { kind: 'torque', jointRef: taken.jointRef, torqueNm, angleDeg });
  };
  const port = openSerial(way.path, hear, { baudRate: way.baudRate, lines, origin: device.id });
  const inbox = inboxOf(deps, device, standing, (isHeld) => (isHeld ? port.pause() : port.resume()));
  return {
    standing: standing.told,
    close: async () => {
      await port.close();
      await inbox.empty();
    },
  };
}
