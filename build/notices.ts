/** A package whose code is in the build, and the terms it is under. */
export type Bundled = {
  readonly name: string;
  readonly version: string;
  /** As its package.json says: an SPDX expression. */
  readonly license: string;
  /** The text of its licence file. */
  readonly text: string;
};

/** Helpers the bundler writes into scripts come out of no file: they are the bundler's own. */
const helpers: readonly (readonly [start: string, name: string])[] = [
  ['\0vite/', 'vite'],
  ['\0rolldown/', 'rolldown'],
];

/** The name of the package a module belongs to; undefined for a module of the project. */
export function packageOf(id: string): string | undefined {
  const helper = helpers.find(([start]) => id.startsWith(start));
  if (helper) return helper[1];
  const below = id.replaceAll('\\', '/').split('/node_modules/');
  const rest = below.length > 1 ? below.at(-1) : undefined;
  return rest === undefined ? undefined : /^(?:@[^/]+\/)?[^/]+/.exec(rest)?.[0];
}

type Parts = { readonly owners: readonly string[]; readonly terms: string };

/** Who a licence text names as owner, and its terms without title and owners. */
function partsOf(text: string): Parts {
  // what is bundled in the bundler is not bundled here, and what is said after the end of the terms is none of them
  const own = text.split(/^(?:# Licenses of bundled|end of terms)/m)[0] ?? '';
  const paragraphs = own
    .replace(/[“”]/g, '"')
    .replace(/^(Copyright .*)$/gm, '\n$1\n')
    .split(/\n\s*\n/)
    .map((paragraph) => paragraph.replace(/\s+/g, ' ').trim());
  const from = paragraphs.findIndex((paragraph) => paragraph.startsWith('Permission '));
  return {
    owners: paragraphs.filter((paragraph) => paragraph.startsWith('Copyright ')),
    terms: from < 0 ? '' : paragraphs.slice(from).filter(Boolean).map(inLines).join('\n\n'),
  };
}

/** A paragraph in lines short enough to read where a text is shown as it is. */
const inLines = (paragraph: string): string => paragraph.replace(/(.{1,76})(?: |$)/g, '$1\n').trimEnd();

/**
 * The notices of all packages as one text: those under the same terms stand together, each with its own copyright line,
 * above the terms said once.
 *
 * @throws Error for a licence that is neither MIT nor ISC, or a text without an owner or terms: somebody must look
 */
export function noticesOf(packages: readonly Bundled[]): string {
  const groups = new Map<string, string[]>();
  for (const { name, version, license, text } of packages.toSorted((a, b) => (a.name < b.name ? -1 : 1))) {
    const { owners, terms } = partsOf(text);
    if (!/\b(MIT|ISC)\b/.test(license) || /\bAND\b/.test(license))
      throw new Error(`${name} is under ${license}: its terms may ask for more than a notice`);
    if (owners.length === 0 || terms === '') throw new Error(`the licence of ${name} cannot be read`);
    const group = groups.get(terms) ?? [];
    groups.set(terms, [
      ...group,
      `${name} ${version}\n${owners.map((owner) => `  ${inLines(owner).replaceAll('\n', '\n  ')}`).join('\n')}`,
    ]);
  }
  const parts = [...groups].map(([terms, named]) => `${named.join('\n')}\n\n${terms}`);
  return `Code of these packages is part of Knifeline, under the terms below each list.\n\n${parts.join('\n\n\n')}\n`;
}
