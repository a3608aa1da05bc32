import { type Picture, partBar, pictureInWords } from '@clampwright/core/plot';
import { useId } from 'react';
import { useLanguage } from '../app/language.ts';
import { Hatch } from './hatch.tsx';
import { useWidth } from './use-width.ts';
import './plots.css';

type ShareBarProps = { readonly picture: Extract<Picture, { kind: 'shares' }> };

const HEIGHT_PX = 44;
const KINDS = ['plain', 'first', 'second'] as const;

/** A whole and its parts on one bar, each with its own hatching, named and told beneath. */
export function ShareBar({ picture }: ShareBarProps) {
  const { title, parts } = picture;
  const language = useLanguage();
  const [ref, widthPx] = useWidth<HTMLDivElement>(320);
  const id = useId();
  const looks = (index: number) => {
    const kind = KINDS[index % KINDS.length];
    return kind === 'plain'
      ? { className: 'plot-part plot-part-plain' }
      : { className: 'plot-part', fill: `url(#${id}-${kind})` };
  };
  const laid = partBar(
    parts.map(({ share }) => share),
    widthPx - 2,
  );
  return (
    <figure className="plot">
      <figcaption>{title}</figcaption>
      <div ref={ref} className="plot-paper">
        <svg
          viewBox={`0 0 ${widthPx} ${HEIGHT_PX}`}
          width={widthPx}
          height={HEIGHT_PX}
          role="img"
          aria-label={pictureInWords(picture, language)}
        >
          <defs>
            <Hatch id={`${id}-first`} kind="first" />
            <Hatch id={`${id}-second`} kind="second" />
          </defs>
          {laid.map(({ left, width }, index) => (
            <rect key={index} {...looks(index)} x={left + 1} y={1} width={width} height={HEIGHT_PX - 2} />
          ))}
        </svg>
      </div>
      <ul className="plot-key">
        {parts.map(({ name, text }, index) => (
          <li key={name}>
            <svg viewBox="0 0 26 22" width="26" height="22" aria-hidden="true">
              <rect {...looks(index)} x="1" y="3" width="24" height="16" />
            </svg>
            <span>
              {name} <strong>{text}</strong>
            </span>
          </li>
        ))}
      </ul>
    </figure>
  );
}
