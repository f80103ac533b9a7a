/** Makes file contents from pictures; loads formats on demand. */
import type { Scene } from '../../draw/scene.ts';
import type { Template } from '../../draw/template.ts';
import type { DrawOptions, PictureFormat } from './asked.ts';
import type { Picture } from './pictures.ts';
import { pngWriter } from './png-writer.ts';

export interface Content {
  readonly content: string | Uint8Array;
  readonly lacking: readonly string[];
}

interface Run {
  readonly options: DrawOptions;
  readonly day: string;
}

/** Per inch: sharp on phones and paper. */
const DOTS = 200;

/** One file's contents. */
export const contentOf = (pictures: readonly Picture[], run: Run): Promise<Content> =>
  writers[plainFormat(run.options)](pictures, run);

type PlainFormat = Exclude<PictureFormat, 'jpeg'>;

/** JPEG needs a photo, checked earlier. */
const plainFormat = ({ format }: DrawOptions): PlainFormat => (format === 'jpeg' ? 'png' : format);

const writers: Readonly<Record<PlainFormat, (pictures: readonly Picture[], run: Run) => Promise<Content>>> = {
  svg: async ([picture], { options }) => ({ content: await svgOf(picture, options), lacking: [] }),
  png: async ([picture], { options }) => {
    if (picture === undefined) return { content: '', lacking: [] };
    const [{ printedScene }, writer, { sceneSvg }, { paperFonts, fontFiles }] = await Promise.all([
      import('../../draw/pdf-bundle.ts'),
      pngWriter(),
      import('../../draw/svg.ts'),
      import('../fonts.ts'),
    ]);
    const { scene, lacking } = printedScene(await sceneOf(picture, options), paperFonts());
    return { content: writer.svgPng(sceneSvg(scene), { fontFiles: fontFiles(), dots: DOTS }), lacking };
  },
  html: async (pictures, { options }) => {
    const [{ picturesHtml }, { titleText }] = await Promise.all([
      import('../../draw/html.ts'),
      import('../../draw/frame.ts'),
    ]);
    const pages = await Promise.all(
      pictures.map(async (picture) => ({
        ...picture,
        units: options.units,
        title: titleText(picture.advice.facts.order),
        scenes: await phoneScenesOf(picture, options),
      })),
    );
    return { content: picturesHtml(pages), lacking: [] };
  },
  pdf: async (pictures, { options, day }) => {
    const [{ templatesPdf }, { paperFonts }] = await Promise.all([
      import('../../draw/pdf-bundle.ts'),
      import('../fonts.ts'),
    ]);
    const templates = (await Promise.all(pictures.map((picture) => templateFor(picture, options)))).flatMap(
      (template) => template ?? [],
    );
    const { bytes, lacking } = await templatesPdf(templates, {
      paper: options.paper ?? 'letter',
      fonts: paperFonts(),
      day: new Date(`${day}T00:00:00Z`),
    });
    return { content: bytes, lacking };
  },
};

async function svgOf(picture: Picture | undefined, options: DrawOptions): Promise<string> {
  if (picture === undefined) return '';
  const { sceneSvg } = await import('../../draw/svg.ts');
  const template = options.template === true ? await templateFor(picture, options) : undefined;
  if (template === undefined) return sceneSvg(await sceneOf(picture, options));
  const { templateScene } = await import('../../draw/template.ts');
  return sceneSvg(templateScene(template), 'mm');
}

async function templateFor(
  { advice, shown }: Picture,
  { units }: DrawOptions,
): Promise<Template | undefined> {
  const { templateOf } = await import('../../draw/template.ts');
  const [{ candidate, mark } = { candidate: undefined, mark: undefined }] = shown;
  return candidate === undefined ? undefined : templateOf({ advice, candidate, mark, units });
}

async function sceneOf({ advice, shown }: Picture, { view, units }: DrawOptions): Promise<Scene> {
  const [first] = shown;
  if (view === 'flat' && first !== undefined) {
    return (await import('../../draw/flat-page.ts')).flatScene({ advice, shown: first, units });
  }
  return (await import('../../draw/page.ts')).sideScene({ advice, shown, units });
}

/** Each panel is a picture; flat stays one. */
async function phoneScenesOf(picture: Picture, options: DrawOptions): Promise<readonly Scene[]> {
  if (options.view === 'flat') return [await sceneOf(picture, options)];
  return (await import('../../draw/page.ts')).phoneScenes({ ...picture, units: options.units });
}
