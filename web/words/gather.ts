/** Words by part and name. */
export type Words = Readonly<Record<string, object>>;

/** The files of one folder, each by its name without the ending, once all of them have come. */
export async function gather(
  files: Readonly<Record<string, () => Promise<Words>>>,
  folder: string,
): Promise<readonly (readonly [name: string, words: Words])[]> {
  const found = Object.entries(files).filter(([path]) => path.startsWith(folder));
  return Promise.all(found.map(async ([path, bring]) => [path.slice(folder.length, -'.json'.length), await bring()]));
}

/** The same for folders whose files hold several parts each: what the kernel says, on the screen and on paper. */
export async function gatherParts(files: Parameters<typeof gather>[0], folder: string): Promise<Words> {
  return Object.assign({}, ...(await gather(files, folder)).map(([, parts]) => parts)) as Words;
}
