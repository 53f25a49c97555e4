import { useState } from 'preact/hooks';
import { addPicture } from '../../job/pictures';
import type { Bench } from '../bench';
import type { Pictures } from '../pictures';
import * as words from './words';

type TakingProps = {
  readonly bench: Pick<Bench, 'job' | 'act' | 'newId'>;
  readonly pictures: Pictures;
  /** Code of the place they belong to. */
  readonly of: string;
};

type State = { readonly done: number; readonly of: number } | undefined;

/** Takes pictures with the camera, or picks them: one after the other, each kept before the next is begun. */
export function Taking({ bench, pictures, of }: TakingProps) {
  const [at, setAt] = useState<State>();
  const [told, setTold] = useState<readonly string[]>([]);
  const take = async (files: readonly File[]) => {
    setTold([]);
    for (const [done, file] of files.entries()) {
      setAt({ done, of: files.length });
      const why = await takeOne({ bench, pictures, of }, file);
      if (why !== undefined)
        setTold((all) => [...all, words.refusedOf(files.length > 1 ? file.name : '', why)]);
    }
    setAt(undefined);
  };
  return (
    <>
      <div class="pad-x adds">
        <FileButton label={words.takeOne} look="main" camera onFiles={take} />
        <FileButton label={words.pickSome} onFiles={take} />
      </div>
      {at && (
        <p class="pad-x" role="status">
          {words.busy(at.done, at.of)}
        </p>
      )}
      {told.map((line) => (
        <p key={line} class="pad-x wrongline" role="alert">
          {line}
        </p>
      ))}
    </>
  );
}

/** Takes one in; why not, where it was not. */
async function takeOne({ bench, pictures, of }: TakingProps, file: File): Promise<string | undefined> {
  const job = bench.job.peek();
  if (!job) return words.noJob;
  const done = await pictures.take(job, file, ({ hash, size, wide, high }) =>
    bench.act(words.added, addPicture({ id: bench.newId(), of, hash, size, wide, high })),
  );
  return done.ok ? undefined : words.refused(done.error);
}

type FileButtonProps = {
  readonly label: string;
  readonly look?: 'main';
  readonly camera?: boolean;
  readonly onFiles: (files: readonly File[]) => Promise<void>;
};

const FileButton = ({ label, look, camera, onFiles }: FileButtonProps) => (
  <label class={look ? `btn file ${look}` : 'btn file'}>
    {label}
    <input
      class="sr"
      type="file"
      accept="image/*"
      {...(camera ? { capture: 'environment' as const } : { multiple: true })}
      onChange={({ currentTarget: input }) => {
        const files = [...(input.files ?? [])];
        input.value = ''; // the same picture can be picked once more
        void onFiles(files);
      }}
    />
  </label>
);
