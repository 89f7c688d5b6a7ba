/** The notices of all packages that these files come from. Throws where one states no licence. */
export function licenceNotices(files: Iterable<string>): string;
