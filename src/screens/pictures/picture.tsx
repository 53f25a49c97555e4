import { useEffect, useRef, useState } from 'preact/hooks';
import type { Picture as Said } from '../../job/pictures';
import type { Pictures } from '../pictures';
import * as words from './words';
import './pictures.css';

type Shown = { readonly url: string } | keyof typeof words.notShown | undefined;

type PictureProps = {
  readonly pictures: Pick<Pictures, 'read'> | undefined;
  readonly job: string;
  readonly picture: Said;
  readonly no: number;
};

/** One picture, read once it comes near the screen; what cannot be shown says why. */
export function PictureShown({ pictures, job, picture, no }: PictureProps) {
  const box = useRef<HTMLSpanElement>(null);
  const near = useNear(box);
  const shown = useBytes(near ? pictures : undefined, job, picture.hash);
  const { wide, high } = picture;
  return (
    <span class="picturebox" style={{ '--shape': `${wide} / ${high}` }} ref={box}>
      {typeof shown === 'object' ? (
        <img src={shown.url} alt={words.pictureNo(no)} width={wide} height={high} />
      ) : (
        <span class="muted">{shown ? words.notShown[shown] : words.pictureNo(no)}</span>
      )}
    </span>
  );
}

function useNear(box: { readonly current: HTMLElement | null }): boolean {
  const [near, setNear] = useState(false);
  useEffect(() => {
    if (!box.current) return;
    const watch = new IntersectionObserver(
      (seen) => {
        if (seen.some(({ isIntersecting }) => isIntersecting)) setNear(true);
      },
      { rootMargin: '400px' },
    );
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return near;
}

function useBytes(pictures: PictureProps['pictures'], job: string, hash: string): Shown {
  const [shown, setShown] = useState<Shown>();
  useEffect(() => {
    if (!pictures) return;
    let current = true;
    let url: string | undefined;
    void pictures.read(job, hash).then((found) => {
      if (!current) return;
      if (typeof found === 'string') return setShown(found);
      url = URL.createObjectURL(new Blob([found], { type: 'image/jpeg' }));
      setShown({ url });
    });
    return () => {
      current = false;
      if (url !== undefined) URL.revokeObjectURL(url);
    };
  }, [pictures, job, hash]);
  return shown;
}
