import type { JointState } from '@clampwright/core/record';
import { useState } from 'react';
import { useTranslation } from 'react-i18next';
import { useLanguage } from '../app/language.ts';
import { useWho } from '../app/who.tsx';
import { Button } from '../parts/button.tsx';
import { showDate } from '../parts/dates.ts';
import type { JobInHand } from './job-in-hand.ts';
import { ToolDialog } from './tool-dialog.tsx';
import { toolName } from './tool-name.ts';

interface ToolInHandProps {
  readonly job: JobInHand;
  readonly joint: JointState;
}

/** The tool last taken for a joint, and the way to take another. */
export function ToolInHand({ job, joint }: ToolInHandProps) {
  const { t } = useTranslation();
  const language = useLanguage();
  const who = useWho();
  const [isChoosing, setChoosing] = useState(false);
  const tool = joint.tools.at(-1);
  const begin = async () => {
    if (await who.ask()) setChoosing(true);
  };
  return (
    <div className="tool-in-hand">
      {tool ? (
        <p>
          <span className="soft small">{t('tool.in-hand')}</span>
          <br />
          <strong>{toolName(tool)}</strong>
          <br />
          <span className="soft small">
            {t('tool.serial', { serial: tool.wrench.serial })}
            {tool.wrench.calibration
              ? `, ${t('tool.due', { on: showDate(tool.wrench.calibration.dueOn, language) })}`
              : null}
          </span>
        </p>
      ) : (
        <p>
          <strong>{t('tool.none')}</strong>
        </p>
      )}
      {job.state.status === 'closed' ? null : (
        <Button kind={tool ? 'plain' : 'primary'} onPress={() => void begin()}>
          {t(tool ? 'tool.other' : 'tool.choose')}
        </Button>
      )}
      {isChoosing ? <ToolDialog job={job} joint={joint} onClose={() => setChoosing(false)} /> : null}
    </div>
  );
}
