/** Hands a text to the person as a file of their own. */

export function giveFile(name: string, kind: string, text: string | Blob): void {
  const address = URL.createObjectURL(new Blob([text], { type: kind }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken its copy by the time of the next task.
  setTimeout(() => URL.revokeObjectURL(address), 0);
}

/** A file name out of words: letters, figures and dashes only. */
export function fileName(words: readonly string[], ending: string): string {
  const name = words
    .join(' ')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return `${name}.${ending}`;
}
