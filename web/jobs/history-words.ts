import { say } from '@clampwright/core/language';
import { type Language, showAngle, showTorque } from '@clampwright/core/quantity';
import type { CellRef, Entry, Pull } from '@clampwright/core/record';

/** What an entry says, as one readable line. */
export function historyWords(entry: Entry, entries: readonly Entry[], language: Language): string {
  const cell = (ref: CellRef) => cellWords(ref, language);
  const { body } = entry;
  switch (body.kind) {
    case 'opened':
      return say(language, 'event.opened');
    case 'tool-taken': {
      const parts = [body.tool.wrench.name, body.tool.adapter?.name, body.tool.extension?.name].filter(Boolean);
      const taken = say(language, 'event.tool-taken', {
        tag: '',
        wrench: parts.join(' + '),
        joints: body.jointRefs.join(', '),
      }).trim();
      if (!body.exception) return taken;
      return `${taken}. ${body.exception.by.name}: ${body.exception.reason}`;
    }
    case 'pull':
      return `${cell(body.pull.cell)}: ${figures(body.pull, entries, language)}`;
    case 'pull-moved':
      return say(language, 'event.pull-moved', { from: cell(body.from), to: cell(body.to), reason: body.reason });
    case 'pull-set-aside':
      return say(language, 'event.pull-set-aside', { cell: cell(body.cell), reason: body.reason });
    case 'reworked':
      return say(language, 'event.reworked', {
        joint: body.jointRef,
        position: body.position,
        how: say(language, `rework.${body.how}`),
        reason: body.reason,
      });
    case 'accepted':
      return say(language, 'event.accepted', {
        cell: cell(body.cell),
        name: body.exception.by.name,
        reason: body.exception.reason,
      });
    case 'noted':
      return say(language, 'event.noted', { text: body.text });
    case 'signed-off':
      return say(language, 'event.signed-off', { statement: body.statement });
    case 'closed':
      return say(language, 'event.closed');
  }
}

/** Names a cell: joint, stage, round, position. */
export const cellWords = ({ jointRef, stage, round, position }: CellRef, language: Language): string =>
  say(language, 'record.cell', { joint: jointRef, stage, round, position });

function figures({ cell, reading }: Pull, entries: readonly Entry[], language: Language): string {
  const first = entries[0]?.body;
  const joints = first?.kind === 'opened' ? first.sheet.joints : [];
  const unit = joints.find(({ ref }) => ref === cell.jointRef)?.joint.content.torqueUnit ?? 'N·m';
  const torque = showTorque(reading.torqueNm, unit, language);
  return reading.angleDeg === undefined ? torque : `${torque}, ${showAngle(reading.angleDeg, language)}`;
}
